package bath

// Atomic weights, g/mol as printed.
const (
	hydrogen = 1.008
	nitrogen = 14.007
	oxygen   = 15.999
	sodium   = 22.990
	sulfur   = 32.06
	chlorine = 35.45
	copper   = 63.546
	silver   = 107.87
)

// Molar masses, kg/mol.
const (
	molarWater        = (2*hydrogen + oxygen) / 1000
	molarCu           = copper / 1000
	molarCuSO4        = (copper + sulfur + 4*oxygen) / 1000
	molarPentahydrate = molarCuSO4 + 5*molarWater
	molarAg           = silver / 1000
	molarAgNO3        = (silver + nitrogen + 3*oxygen) / 1000
	molarNaCl         = (sodium + chlorine) / 1000
)

var molarMassSource = Source{"molar mass", "abridged standard atomic weights of IUPAC/CIAAW 2021 (from memory); " +
	"the Debian package bodr agrees to the digits given", "memory"}
