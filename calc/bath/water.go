package bath

const (
	celsius0 = 273.15        // K, 0 C
	room     = celsius0 + 20 // K, the temperature of most tables
)

// waterDensity is that of pure water at atmospheric pressure, kg/m3, by Kell,
// J. Chem. Eng. Data 20 (1975) 97, equation 16 (seen in several programs that
// use it). Kell gives 0 to 150 C; his temperatures are those of 1968, which
// differ from today's by less than 0.03 K here.
func waterDensity(kelvin float64) float64 {
	t := kelvin - celsius0
	return (999.83952 + t*(16.945176+t*(-7.9870401e-3+t*(-46.170461e-6+t*(105.56302e-9-t*280.54253e-12))))) /
		(1 + 16.879850e-3*t)
}
