(ROTARY DIRECTION TEST for Small mill with a rotary table, plain G0)
(.. and G1)
(JOB Cloches, nursery bed)
(REVISION DCLGUTFR)
(UNITS mm, angles in degrees)
(X0 jaw face, X+ to the free end. Y0 over the axis)
(Z0 rotary axis, tip of the cutter, tip on the crown is Z 45.05 mm)
(A0 anywhere on a new stick, makes the 0 line. TOP faces the chuck)
(Spindle stays off, nothing is cut)
(CAUTION single step, hand on stop)
G21
G90 G94 G17
G0 Z82.511
G0 A0.000
(Make a line on top of the pipe. Then start again)
M0
G0 A30.000
(Stand at the free end, look toward the chuck. Did the line go to)
(.. your RIGHT: yes or no. Yes: go on. No: write the other)
(.. rotary.sign in the machine profile, and make the programs anew)
M0
M2
