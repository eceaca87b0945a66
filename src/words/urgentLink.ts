/** The label of the five urgent cards and of the link that leads to them from every page. */
export const urgentLabel = 'Urgent';

/** Where that link leads. */
export const urgentPath = '/rules/#urgent';
