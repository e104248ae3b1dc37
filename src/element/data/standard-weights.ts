// Symbols in the order of the atomic number, each with its default weight (conventional for interval elements, else the
// published value; none where there is no standard weight): all that reading and weighing a formula needs. The same figures as
// in atomic-weights.ts, where names, bounds and sources stand; test/laws/element.test.ts holds the two together.
export const STANDARD_WEIGHTS = `
H1.008 He4.002602 Li6.94 Be9.0121831 B10.81 C12.011 N14.007 O15.999 F18.998403162 Ne20.1797 Na22.98976928
Mg24.305 Al26.9815384 Si28.085 P30.973761998 S32.06 Cl35.45 Ar39.95 K39.0983 Ca40.078 Sc44.955907 Ti47.867
V50.9415 Cr51.9961 Mn54.938043 Fe55.845 Co58.933194 Ni58.6934 Cu63.546 Zn65.38 Ga69.723 Ge72.630 As74.921595
Se78.971 Br79.904 Kr83.798 Rb85.4678 Sr87.62 Y88.905838 Zr91.222 Nb92.90637 Mo95.95 Tc Ru101.07 Rh102.90549
Pd106.42 Ag107.8682 Cd112.414 In114.818 Sn118.710 Sb121.760 Te127.60 I126.90447 Xe131.293 Cs132.90545196
Ba137.327 La138.90547 Ce140.116 Pr140.90766 Nd144.242 Pm Sm150.36 Eu151.964 Gd157.249 Tb158.925354 Dy162.500
Ho164.930329 Er167.259 Tm168.934219 Yb173.045 Lu174.96669 Hf178.486 Ta180.94788 W183.84 Re186.207 Os190.23
Ir192.217 Pt195.084 Au196.966570 Hg200.592 Tl204.38 Pb207.2 Bi208.98040 Po At Rn Fr Ra Ac Th232.0377
Pa231.03588 U238.02891 Np Pu Am Cm Bk Cf Es Fm Md No Lr Rf Db Sg Bh Hs Mt Ds Rg Cn Nh Fl Mc Lv Ts Og
`;
