(AIR CUT: every Z is raised by 22.58 mm, nothing is cut)
(JOB Cloches, nursery bed)
(REVISION DCLGUTFR)
(STICK LC, FILE 3 OF 3)
(COLLARS 1-3 CA, 4-7 CB)
(THIS STICK 7 collars, run it for 1 stick)
(STOCK PVC-U pipe 90 x 6.7, measured)
(OD 90.10 mm, WALL up to 7.25 mm, stick 454.00 mm or longer)
(FIRST COLLAR from X 20.00 mm, pitch 54.00 mm)
(UNITS mm, angles in degrees)
(X0 jaw face, X+ to the free end. Y0 over the axis)
(Z0 rotary axis, tip of the cutter, tip on the crown is Z 45.05 mm)
(A0 anywhere on a new stick, makes the 0 line. TOP faces the chuck)
(TOOL TW-23.5, twist drill 23.5 mm, tip 7.06 mm below its edge)
(SPINDLE 413 rpm, FEED 82.60 mm/min)
(CLEAR Z 105.09 mm, DEEPEST Z 50.45 mm)
(TIME 2 min 37 s, tool change not counted)
(CAUTION run in the air first, single step, hand on stop)
(CAUTION clamp the work, eye protection, no gloves)
(CAUTION Chips must not melt: sharp cutter, let it cool, clear the)
(.. chips. The exit side chips out: back it up. Keep the dust out of)
(.. the lungs.)
G21
G90 G94 G17
G0 Z105.094
G0 Y0.000
G0 A56.283
G0 A58.283
G0 X207.000
S413 M3
G4 P3.00
(CB hole 2 at A58.283)
G0 Z70.033
G1 Z50.450 F82.6
G0 Z105.094
G0 X261.000
G0 Z70.033
G1 Z50.450 F82.6
G0 Z105.094
G0 X315.000
G0 Z70.033
G1 Z50.450 F82.6
G0 Z105.094
G0 X369.000
G0 Z70.033
G1 Z50.450 F82.6
G0 Z105.094
(CB hole 3 at A301.717)
G0 A301.717
G0 Z70.033
G1 Z50.450 F82.6
G0 Z105.094
G0 X315.000
G0 Z70.033
G1 Z50.450 F82.6
G0 Z105.094
G0 X261.000
G0 Z70.033
G1 Z50.450 F82.6
G0 Z105.094
G0 X207.000
G0 Z70.033
G1 Z50.450 F82.6
G0 Z105.094
G0 Z105.094
M5
M2
