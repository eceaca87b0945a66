/**
 * Invented: twenty-four heights on a practice sheet, read once, covered, and read again. Technical error 0.30
 * mm, no shift.
 */
export const examplePairs =
  '21.4_21.8*23.1_22.6*24.6_24.7*22_22.6*25.3_25*26.8_26.6*28.2_28.7*27.5_26.8*' +
  '29.9_30.1*31.2_31.5*30.4_30*32.7_32.7*33.5_34.3*34.9_34.3*36.2_36.5*35.6_35.5*' +
  '37.1_37.6*38.8_38.4*39.4_39.2*40.7_41.1*41.5_41.2*43_43.6*42.2_41.7*44.1_44.3';
