package bath

// Density at 20 C: mass % of anhydrous salt against g/cm3. Water, the row at 0,
// is Kell's.
var (
	copperSulfateDensity = newDensity([]point{
		{0.5, 1.0033}, {1, 1.0085}, {2, 1.0190}, {3, 1.0296}, {4, 1.0403}, {5, 1.0511}, {6, 1.0620}, {7, 1.0730},
		{8, 1.0842}, {9, 1.0955}, {10, 1.1070}, {11, 1.1186}, {12, 1.1304}, {13, 1.1424}, {14, 1.1545}, {15, 1.1669},
		{16, 1.1796}, {17, 1.1926}, {18, 1.2059},
	})
	silverNitrateDensity = newDensity([]point{
		{0.5, 1.0027}, {1, 1.0070}, {2, 1.0154}, {3, 1.0239}, {4, 1.0327}, {5, 1.0417}, {6, 1.0506}, {7, 1.0597},
		{8, 1.0690}, {9, 1.0785}, {10, 1.0882}, {12, 1.1079}, {14, 1.1284}, {16, 1.1496}, {18, 1.1715}, {20, 1.1942},
		{22, 1.2177}, {24, 1.2420}, {26, 1.2672}, {28, 1.2933}, {30, 1.3204}, {32, 1.3487}, {34, 1.3780}, {36, 1.4087},
		{38, 1.4407}, {40, 1.4743},
	})
	commonSaltDensity = newDensity([]point{
		{0.1, 0.9989}, {0.2, 0.9997}, {0.3, 1.0004}, {0.4, 1.0011}, {0.5, 1.0018}, {1, 1.0053}, {1.5, 1.0089},
		{2, 1.0125}, {2.5, 1.0160}, {3, 1.0196}, {3.5, 1.0232}, {4, 1.0268}, {4.5, 1.0304}, {5, 1.0340}, {6, 1.0413},
		{7, 1.0486}, {8, 1.0559}, {9, 1.0633}, {10, 1.0707}, {11, 1.0781}, {12, 1.0857}, {13, 1.0932}, {14, 1.1008},
		{15, 1.1085}, {16, 1.1162}, {17, 1.1240}, {18, 1.1319}, {19, 1.1398}, {20, 1.1478}, {21, 1.1558}, {22, 1.1640},
		{23, 1.1721}, {24, 1.1804}, {25, 1.1887}, {26, 1.1972},
	})
)

var densitySource = Source{"density", "CRC Handbook of Chemistry and Physics, 102nd ed. (2021), " +
	"Concentrative Properties of Aqueous Solutions, 20 C; water by Kell, J. Chem. Eng. Data 20 (1975) 97", "seen"}

// density is a table of densities, kept as the volume of a kilogram, m3/kg: the
// salt and the water each bring nearly their own, so that it runs nearly
// straight in the share of salt.
type density struct{ curve }

func newDensity(rows []point) density {
	volumes := []point{{0, 1 / waterDensity(room)}}
	for _, p := range rows {
		volumes = append(volumes, point{p.x, 1e-3 / p.y})
	}
	return density{newCurve(volumes, 0.01, 1)}
}

// at is the density of a solution with that share of anhydrous salt, kg/m3.
//
// Past the last row 1/density goes straight on in the share of salt; beyond
// says when that is so. It would be true if salt took up the same volume in
// any company. At temperatures other than 20 C the density is taken to change
// as water's does: for copper sulfate that is within 0.3 % from 15 to 25 C and
// 0.5 % at 40 C of the model of Laliberté, J. Chem. Eng. Data 54 (2009) 1725
// (its parameters were seen). For the other salts nothing was compared.
func (d density) at(fraction, kelvin float64) float64 {
	volume := d.curve.at(fraction)
	if d.beyond(fraction) {
		volume = d.onward(fraction)
	}
	return waterDensity(kelvin) / waterDensity(room) / volume
}

// beyond says whether that share of salt lies past the last row.
func (d density) beyond(fraction float64) bool { return fraction > d.last() }
