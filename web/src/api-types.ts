// Made from the records of jackwork.app by ApiTypes; change those, then run it again.
// Lengths in mm with y up, forces in N, angles in degrees.
