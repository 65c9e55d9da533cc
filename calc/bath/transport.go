package bath

// transport is how a salt moves through its bath. A salt without one has no
// limits: what is dissolved in common salt is not what plates.
type transport struct {
	viscosity    *viscosity
	diffusion    float64 // m2/s at 20 C
	transference float64 // share of the current that the salt's metal carries
}

// What diffusion and transference are at the strengths of a bath is known
// roughly. Copper sulfate's are those near 1 mol/L (its copper carries 0.40 at
// infinite dilution), with the diffusion of 25 C taken for 20 C as it is; silver
// nitrate's are those at infinite dilution, the diffusion 17.7e-10 m2/s at 25 C
// brought to 20 C.
var (
	copperSulfateTransport = transport{&copperSulfateViscosity, 4.6e-10, 0.30}
	silverNitrateTransport = transport{&silverNitrateViscosity, 1.5e-9, 0.46}

	copperSulfateTransportSources = []Source{
		{"diffusion", "4.6e-10 m2/s near 1 mol/L, Eversole, Kindsvater and Peterson, J. Phys. Chem. 46 (1942) 370, at 25 C", "memory"},
		{"transference", "0.30 near 1 mol/L", "memory"},
	}
	silverNitrateTransportSources = []Source{
		{"diffusion", "1.5e-9 m2/s, by Nernst and Hartley at infinite dilution from the ions' in the CRC Handbook (seen)", "computed"},
		{"transference", "0.46 at infinite dilution, from ionic conductivities in the CRC Handbook (seen)", "computed"},
	}
)

// diffusionAt is the diffusion at a temperature, m2/s, after Stokes and
// Einstein:
//
//	D = D(20 C) (T / 293.15 K) (viscosity of water at 20 C / viscosity of water at T)
//
// A. Einstein, Ann. Phys. 17 (1905) 549, from memory. True as far as what
// diffuses stays as large; for these salts no other temperature was compared.
func (t transport) diffusionAt(kelvin float64) float64 {
	return t.diffusion * kelvin / room / waterThinning(kelvin)
}
