(JOB Cloches, nursery bed)
(REVISION DCLGUTFR)
(STICK LC, FILE 2 OF 3)
(COLLARS 1-3 CA, 4-7 CB)
(THIS STICK 7 collars, run it for 1 stick)
(STOCK PVC-U pipe 90 x 6.7, measured)
(OD 90.10 mm, WALL up to 7.25 mm, stick 454.00 mm or longer)
(FIRST COLLAR from X 20.00 mm, pitch 54.00 mm)
(UNITS mm, angles in degrees)
(X0 jaw face, X+ to the free end. Y0 over the axis)
(Z0 rotary axis, tip of the cutter, tip on the crown is Z 45.05 mm)
(A0 anywhere on a new stick, makes the 0 line. TOP faces the chuck)
(TOOL TW-23, twist drill 23 mm, tip 6.91 mm below its edge)
(SPINDLE 422 rpm, FEED 84.40 mm/min)
(CLEAR Z 82.36 mm, DEEPEST Z 28.10 mm)
(TIME 5 min 52 s, tool change not counted)
(CAUTION run in the air first, single step, hand on stop)
(CAUTION clamp the work, eye protection, no gloves)
(CAUTION Chips must not melt: sharp cutter, let it cool, clear the)
(.. chips. The exit side chips out: back it up. Keep the dust out of)
(.. the lungs.)
G21
G90 G94 G17
G0 Z82.360
G0 Y0.000
G0 A-2.000
G0 A0.000
G0 X369.000
S422 M3
G4 P3.00
(CA hole 1, CB hole 1 at A0.000)
G0 Z47.450
G1 Z28.098 F84.4
G0 Z82.360
G0 X315.000
G0 Z47.450
G1 Z28.098 F84.4
G0 Z82.360
G0 X261.000
G0 Z47.450
G1 Z28.098 F84.4
G0 Z82.360
G0 X207.000
G0 Z47.450
G1 Z28.098 F84.4
G0 Z82.360
G0 X153.000
G0 Z47.450
G1 Z28.098 F84.4
G0 Z82.360
G0 X99.000
G0 Z47.450
G1 Z28.098 F84.4
G0 Z82.360
G0 X45.000
G0 Z47.450
G1 Z28.098 F84.4
G0 Z82.360
(CA hole 2 at A72.000)
G0 A72.000
G0 Z47.450
G1 Z28.098 F84.4
G0 Z82.360
G0 X99.000
G0 Z47.450
G1 Z28.098 F84.4
G0 Z82.360
G0 X153.000
G0 Z47.450
G1 Z28.098 F84.4
G0 Z82.360
(CA hole 3 at A144.000)
G0 A144.000
G0 Z47.450
G1 Z28.098 F84.4
G0 Z82.360
G0 X99.000
G0 Z47.450
G1 Z28.098 F84.4
G0 Z82.360
G0 X45.000
G0 Z47.450
G1 Z28.098 F84.4
G0 Z82.360
(CA hole 4 at A216.000)
G0 A216.000
G0 Z47.450
G1 Z28.098 F84.4
G0 Z82.360
G0 X99.000
G0 Z47.450
G1 Z28.098 F84.4
G0 Z82.360
G0 X153.000
G0 Z47.450
G1 Z28.098 F84.4
G0 Z82.360
(CA hole 5 at A288.000)
G0 A288.000
G0 Z47.450
G1 Z28.098 F84.4
G0 Z82.360
G0 X99.000
G0 Z47.450
G1 Z28.098 F84.4
G0 Z82.360
G0 X45.000
G0 Z47.450
G1 Z28.098 F84.4
G0 Z82.360
G0 Z82.360
M5
M2
