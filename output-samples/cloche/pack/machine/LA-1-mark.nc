(JOB Cloches, nursery bed)
(REVISION DCLGUTFR)
(STICK LA, FILE 1 OF 3)
(COLLARS 1-9 CB)
(THIS STICK 9 collars, run it for 11 sticks)
(STOCK PVC-U pipe 90 x 6.7, measured)
(OD 90.10 mm, WALL up to 7.25 mm, stick 562.00 mm or longer)
(FIRST COLLAR from X 20.00 mm, pitch 54.00 mm)
(UNITS mm, angles in degrees)
(X0 jaw face, X+ to the free end. Y0 over the axis)
(Z0 rotary axis, tip of the cutter, tip on the crown is Z 45.05 mm)
(A0 anywhere on a new stick, makes the 0 line. TOP faces the chuck)
(TOOL TW-3, twist drill 3 mm, tip 0.90 mm below its edge)
(SPINDLE 3236 rpm, FEED 161.80 mm/min)
(CLEAR Z 76.35 mm, DEEPEST Z 43.85 mm)
(TIME 1 min 36 s, tool change not counted)
(CAUTION run in the air first, single step, hand on stop)
(CAUTION clamp the work, eye protection, no gloves)
(CAUTION Chips must not melt: sharp cutter, let it cool, clear the)
(.. chips. The exit side chips out: back it up. Keep the dust out of)
(.. the lungs.)
G21
G90 G94 G17
G0 Z76.352
G0 Y0.000
G0 A-2.000
G0 A0.000
G0 X25.000
S3236 M3
G4 P3.00
(0 line dimple at A0.000)
G0 Z47.450
G1 Z43.850 F161.8
G0 Z76.352
G0 X79.000
G0 Z47.450
G1 Z43.850 F161.8
G0 Z76.352
G0 X133.000
G0 Z47.450
G1 Z43.850 F161.8
G0 Z76.352
G0 X187.000
G0 Z47.450
G1 Z43.850 F161.8
G0 Z76.352
G0 X241.000
G0 Z47.450
G1 Z43.850 F161.8
G0 Z76.352
G0 X295.000
G0 Z47.450
G1 Z43.850 F161.8
G0 Z76.352
G0 X349.000
G0 Z47.450
G1 Z43.850 F161.8
G0 Z76.352
G0 X403.000
G0 Z47.450
G1 Z43.850 F161.8
G0 Z76.352
G0 X457.000
G0 Z47.450
G1 Z43.850 F161.8
G0 Z76.352
(TOP dimple at A7.631)
G0 A7.631
G0 Z47.450
G1 Z43.850 F161.8
G0 Z76.352
G0 X403.000
G0 Z47.450
G1 Z43.850 F161.8
G0 Z76.352
G0 X349.000
G0 Z47.450
G1 Z43.850 F161.8
G0 Z76.352
G0 X295.000
G0 Z47.450
G1 Z43.850 F161.8
G0 Z76.352
G0 X241.000
G0 Z47.450
G1 Z43.850 F161.8
G0 Z76.352
G0 X187.000
G0 Z47.450
G1 Z43.850 F161.8
G0 Z76.352
G0 X133.000
G0 Z47.450
G1 Z43.850 F161.8
G0 Z76.352
G0 X79.000
G0 Z47.450
G1 Z43.850 F161.8
G0 Z76.352
G0 X25.000
G0 Z47.450
G1 Z43.850 F161.8
G0 Z76.352
G0 Z76.352
M5
M2
