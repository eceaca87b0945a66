/**
 * Landmarks of a neutral, exactly symmetric face model, millimetres: x to the client's left, y up, z towards the camera.
 * Source: face_model_with_iris.obj of google-ai-edge/mediapipe at 85c0cdc (mediapipe/modules/face_geometry/data),
 * Apache-2.0. Only the left half and the middle are kept; the right half is its mirror image, to the last digit.
 * Vertices: brow top 336, 296, 334, 293, 300; brow base 285, 295, 282, 283, 276 (front to tail); inner eye corner 362;
 * outer 263; pupil 473; nose wing 294; glabella 9; nasion 168; nose tip 1; subnasale 2; chin 152.
 * One model head, not a mean of people: it says which way a picture errs and about how much.
 */
export const canonicalFace = {
  left: {
    browTop: [[13.956, 50.12, 53.16], [27.603, 51.01, 50.16], [39.866, 51.095, 44.663], [49.859, 48.025, 37.52], [57.21, 42.546, 28.309]],
    browBase: [[12.209, 41.422, 51.06], [26.445, 45.247, 49.216], [37.35, 45.082, 45.505], [45.886, 43.02, 40.485], [52.533, 38.816, 33.632]],
    innerCorner: [18.564, 25.852, 37.579],
    outerCorner: [44.459, 26.64, 31.734],
    pupil: [31.818, 26.358, 38.263],
    noseWing: [15.923, -12.577, 54.569],
  },
  middle: {
    glabella: [0, 48.86, 53.853],
    nasion: [0, 32.71, 52.36],
    noseTip: [0, -11.269, 74.756],
    subnasale: [0, -20.89, 60.583],
    chin: [0, -94.034, 42.645],
  },
} as const;
