/** Where the tape goes, the same for every body table of the publisher (Craft Yarn Council, body measurements; in our words). */
export const howToMeasure: Readonly<Record<string, string>> = {
  bust_chest: 'around the fullest part, tape level',
  center_back_neck_to_wrist:
    'from the bone at the back of the neck over the shoulder and the slightly bent arm to the wrist (older editions: neck-to-cuff)',
  back_waist_length: 'from the bone at the back of the neck to the natural waist',
  back_hip_length: 'men: from the bone at the back of the neck to the hip, the usual sweater length',
  cross_back: 'shoulder point to shoulder point across the back',
  arm_length_to_underarm: 'from wrist to underarm, arm slightly bent (older editions: sleeve length)',
  upper_arm: 'around the widest part of the upper arm',
  armhole_depth: 'from the outer shoulder straight down to underarm level',
  waist: 'around the natural waist',
  hip: 'around the fullest part of the hips',
}
