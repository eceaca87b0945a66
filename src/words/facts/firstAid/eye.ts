import type { eyeFacts } from '#lib/firstAid/facts/eye.ts';

/** What each fact about an eye says, in a few words. */
export const firstAidEyeFactNames = {
  'eye-call-burning': 'Call for burning or stinging',
  'eye-rinse-goes-on': 'Ask while the rinsing goes on',
  'eye-shut-or-blurred': 'Shut, or sight changed: call',
  'eye-lens-out': 'Lens out',
  'eye-lens-washes-out': 'A lens may wash out',
  'eye-nose-to-ear': 'Water from nose to ear',
  'eye-lower': 'The splashed eye is the lower one',
  'eye-lids-open': 'Lids held open',
  'eye-rinse-minutes': 'Rinse an eye for at least',
  'eye-rinse-short-minutes': 'Rinse an eye, as New Zealand teaches: at least',
  'eye-no-rubbing': 'No rubbing',
  'eye-no-drops': 'No eye bath, no drops',
  'eye-doctor': 'An eye doctor sees it',
  'eye-numb-guard': 'A numb eye is guarded',
  'eye-pain-comes-back': 'Discomfort went and came back',
  'eye-cream-water': 'Cream in the eye: water at once',
  'eye-chlorhexidine': 'Chlorhexidine can harm for good',
  'eye-pass-it-on': 'Tell them what it was',
  'eye-pad': 'St John puts a pad on',
} as const satisfies Readonly<Record<keyof typeof eyeFacts, string>>;
