package bath

import (
	"math"
	"math/rand/v2"
	"testing"

	"saltbite/calc/metal"
	"saltbite/calc/quantity"
)

// alloy is a metal of that composition, in per cent.
func alloy(parts ...metal.Part) *metal.Metal {
	m := &metal.Metal{Composition: parts}
	for i := range m.Composition {
		m.Composition[i].Share /= 100
	}
	return m
}

func catalogued(t testing.TB, id string) *metal.Metal {
	t.Helper()
	for m := range metal.All() {
		if m.ID == id {
			return m
		}
	}
	t.Fatalf("no metal %s", id)
	return nil
}

// ampereHour is an ampere hour in C.
const ampereHour = 3600

// What a gram dissolved takes from the bath and leaves in it. Each sum is
// written out in moles, with abridged atomic weights (from memory, and the
// package bodr agrees); the figures, to the digits given, are also those of the
// trade, derived by another hand.
func TestGramDissolved(t *testing.T) {
	brass := alloy(metal.Part{Symbol: "Cu", Share: 70}, metal.Part{Symbol: "Zn", Share: 30})
	nickelSilver := alloy(metal.Part{Symbol: "Cu", Share: 65}, metal.Part{Symbol: "Ni", Share: 18}, metal.Part{Symbol: "Zn", Share: 17})
	sterling := alloy(metal.Part{Symbol: "Ag", Share: 92.5}, metal.Part{Symbol: "Cu", Share: 7.5})
	tin, lead := alloy(metal.Part{Symbol: "Sn", Share: 100}), alloy(metal.Part{Symbol: "Pb", Share: 100})
	gramOf := func(m *metal.Metal, s *Salt) Run { return Run{Salt: s, Metal: m, Efficiency: 0.95}.After(gram) }
	for _, x := range []struct {
		name   string
		run    Run
		symbol string
		want   float64 // g
		digits float64 // half the last digit of the figure of the trade, g
	}{
		{"brass's copper", gramOf(brass, CopperSulfate), "lost", (0.70/63.546+0.30/65.38)*63.546/0.95 - 0.70, 0}, // at 95 %, this sum
		{"brass's zinc", gramOf(brass, CopperSulfate), "Zn", 0.300, 5e-4},                                        // its share
		{"nickel silver's nickel", gramOf(nickelSilver, CopperSulfate), "Ni", 0.18, 5e-3},                        // its share
		{"nickel silver's zinc", gramOf(nickelSilver, CopperSulfate), "Zn", 0.17, 5e-3},                          // its share
		{"sterling's copper", gramOf(sterling, SilverNitrate), "Cu", 0.075, 5e-4},                                // its share
		{"brass's copper stays the bath's", gramOf(brass, CopperSulfate), "Cu", 0, 0},                            // definition
		{"sterling's silver stays the bath's", gramOf(sterling, SilverNitrate), "Ag", 0, 0},                      // definition
		{"tin's sludge", gramOf(tin, CopperSulfate), "sludge", 1.27, 5e-3},                                       // (118.71 + 2 x 15.999)/118.71 = 1.2695
		{"tin's sludge in nitrate", gramOf(tin, SilverNitrate), "sludge", 1.27, 5e-3},                            // the same
		{"tin dissolved", gramOf(tin, CopperSulfate), "Sn", 0, 0},                                                // definition
		{"lead's sludge", gramOf(lead, CopperSulfate), "sludge", 1.46, 5e-3},                                     // (207.2 + 32.06 + 4 x 15.999)/207.2 = 1.4636
		{"lead's sludge in nitrate", gramOf(lead, SilverNitrate), "sludge", 0, 0},                                // definition: dissolved there
		{"lead dissolved in nitrate", gramOf(lead, SilverNitrate), "Pb", 1, 1e-9},                                // all of it
		{"lead dissolved in sulfate", gramOf(lead, CopperSulfate), "Pb", 0, 0},                                   // definition
	} {
		got := 0.0
		switch x.symbol {
		case "lost":
			got = x.run.Lost().SI
		case "sludge":
			got = x.run.Sludge()
		default:
			got = x.run.Gained(x.symbol)
		}
		if got /= gram; math.Abs(got-x.want) > x.digits+1e-12 {
			t.Errorf("%s: %.5f g, want %.5f", x.name, got, x.want)
		}
	}
	for _, x := range []struct {
		name string
		run  Run
		want float64 // g of the bath's metal taken
		salt float64 // g of salt that bring it back; 0: not said
	}{
		// (0.70/63.546 + 0.30/65.38) 63.546 = 0.99158, less 0.70
		{"brass 70/30", Run{CopperSulfate, brass, 0, 1}, 0.292, 1.15},
		// (0.65/63.546 + 0.18/58.693 + 0.17/65.38) 63.546 = 1.01011, less 0.65
		{"nickel silver 65/18/17", Run{CopperSulfate, nickelSilver, 0, 1}, 0.360, 0},
		// (0.925/107.87 + 2 x 0.075/63.546) 107.87 = 1.17963, less 0.925; 0.25463 x 169.874/107.87 = 0.40099
		{"sterling", Run{SilverNitrate, sterling, 0, 1}, 0.255, 0.401},
	} {
		got, ok := known(x.run.After(gram).Lost())
		if !ok || math.Abs(got/gram-x.want) > 5e-4 {
			t.Errorf("%s takes %.4f g, want %.3f", x.name, got/gram, x.want)
		}
		salt, ok := known(x.run.Salt.SaltToAdd(got, 1))
		if !ok || x.salt > 0 && math.Abs(salt/gram-x.salt) > 5e-3*x.salt {
			t.Errorf("%s: %.4f g of salt, want %.3f", x.name, salt/gram, x.salt)
		}
	}
}

// Whatever the metal and the salt: every element that leaves is somewhere, and
// the charges balance at the anode, at the cathode and in the bath.
func TestRunConserves(t *testing.T) {
	r := rand.New(rand.NewPCG(11, 12))
	for m := range metal.All() {
		for _, salt := range salts {
			run := Run{salt, m, math.Pow(10, 8*r.Float64()-2), 0.5 + r.Float64()}
			removed := run.removed()
			deposit, plates := known(run.Deposit())
			lost := run.Lost().SI

			// Metal: out of the sheet = given back + gained + in the sludge + dust.
			// What a gram of either sludge holds: 118.71/150.708 tin, 207.2/303.256 lead (abridged atomic weights).
			inSludge, gained, dust := run.removed()*m.Share("Sn"), 0.0, 0.0
			sludge := inSludge * 150.708 / 118.71
			if salt.Metal == "Cu" {
				inSludge += removed * m.Share("Pb")
				sludge += removed * m.Share("Pb") * 303.256 / 207.2
			}
			// Charge, mol: at the anode by each element's ion; in the bath by what it gains.
			anode, bath := 0.0, 0.0
			for _, e := range metal.Elements {
				mass, z := removed*m.Share(e.Symbol), float64(e.Charge)
				if e.Symbol == "Cu" && !plates {
					z = 1 // Cu(I)
				}
				if e.Symbol == "Ag" && salt.Metal == "Cu" && m.Share("Cu") > m.Share("Ag") {
					z = 0 // slime
				}
				anode += mass * z / e.MolarMass
				gained += run.Gained(e.Symbol)
				if z == 0 {
					dust += mass
				}
				if e.Symbol != salt.Metal {
					bath += mass * z / e.MolarMass
				}
			}
			if !within(run.Sludge(), sludge, 1e-12) {
				t.Errorf("%s in %s: %g kg of sludge, want %g", m.ID, salt.Name, run.Sludge(), sludge)
			}
			if got := deposit - lost + gained + inSludge + dust; !within(got, removed, 1e-11) {
				t.Errorf("%s in %s: %g kg leave, %g arrive", m.ID, salt.Name, removed, got)
			}
			if !within(anode*metal.Faraday, run.Efficiency*run.Charge, 1e-12) {
				t.Errorf("%s in %s: the anode takes %g of %g C", m.ID, salt.Name, anode*metal.Faraday, run.Efficiency*run.Charge)
			}
			if !plates {
				continue
			}
			ion, z := weight(salt.Metal), float64(charges(salt.Metal))
			if !within(deposit/ion*z*metal.Faraday, run.Charge, 1e-12) {
				t.Errorf("%s in %s: the cathode takes %g of %g C", m.ID, salt.Name, deposit/ion*z*metal.Faraday, run.Charge)
			}
			// With every coulomb dissolving metal, other ions come for those lost.
			run.Efficiency = 1
			bath *= run.removed() / removed
			if lost = run.Lost().SI; math.Abs(lost/ion*z-bath) > 1e-12*run.Charge/metal.Faraday {
				t.Errorf("%s in %s: the bath loses %g mol of charge and gains %g", m.ID, salt.Name, lost/ion*z, bath)
			}
		}
	}
}

// A pure metal in its own salt balances to nothing, not to a rounding; below
// full efficiency the bath loses, above it gains.
func TestPureMetalBalances(t *testing.T) {
	for _, x := range []struct {
		salt  *Salt
		metal *metal.Metal
	}{
		{CopperSulfate, alloy(metal.Part{Symbol: "Cu", Share: 100})},
		{SilverNitrate, alloy(metal.Part{Symbol: "Ag", Share: 100})},
	} {
		for charge := 1e-3; charge < 1e9; charge *= 7 {
			if lost, ok := known((Run{x.salt, x.metal, charge, 1}).Lost()); !ok || lost != 0 {
				t.Errorf("%s: %g C take %g kg", x.salt.Name, charge, lost)
			}
			deposit := Run{x.salt, x.metal, charge, 1}.Deposit().SI
			for _, efficiency := range []float64{0.9, 1.05} {
				if lost := (Run{x.salt, x.metal, charge, efficiency}).Lost().SI; !within(lost, (1-efficiency)*deposit, 1e-9) { // definition
					t.Errorf("%s: %g C at %g take %g kg of %g", x.salt.Name, charge, efficiency, lost, deposit)
				}
			}
		}
	}
}

// What a coulomb dissolves, in g/(A.h): 37311.4 over the moles of charge in a
// kilogram, by hand with 63.546, 107.87, 118.71 and 65.38 g/mol.
func TestDissolves(t *testing.T) {
	bronze := alloy(metal.Part{Symbol: "Cu", Share: 92}, metal.Part{Symbol: "Sn", Share: 8})
	brass := alloy(metal.Part{Symbol: "Cu", Share: 70}, metal.Part{Symbol: "Zn", Share: 30})
	shibuichi := alloy(metal.Part{Symbol: "Cu", Share: 75}, metal.Part{Symbol: "Ag", Share: 25})
	tinny := alloy(metal.Part{Symbol: "Ag", Share: 90}, metal.Part{Symbol: "Sn", Share: 10})
	for _, x := range []struct {
		name       string
		salt       *Salt
		metal      *metal.Metal
		usual, low float64
	}{
		{"bronze in sulfate", CopperSulfate, bronze, 1.23127, 1.17884}, // 1840 / 63.546 + 160 / 118.71 = 30.3032; tin's 320: 31.6510
		{"bronze in anhydrous sulfate", CopperSulfateAnhydrous, bronze, 1.23127, 1.17884},
		{"bronze in common salt", CommonSalt, bronze, 2.35767, 1.23127},        // 920 / 63.546 + 160 / 118.71 = 15.8255; copper's 1840
		{"brass in sulfate", CopperSulfate, brass, 1.19556, 1.19556},           // 1400 / 63.546 + 600 / 65.38 = 31.2084
		{"brass in common salt", CommonSalt, brass, 1.84776, 1.19556},          // 700 / 63.546 + 600 / 65.38 = 20.1928
		{"shibuichi in sulfate", CopperSulfate, shibuichi, 1.58066, 1.58066},   // 1500 / 63.546 = 23.6049
		{"shibuichi in nitrate", SilverNitrate, shibuichi, 1.43934, 1.43934},   // and 250 / 107.87: 25.9226
		{"silver with tin in nitrate", SilverNitrate, tinny, 3.72066, 3.18549}, // 900 / 107.87 + 200 / 118.71 = 10.0282; tin's 400: 11.7129
	} {
		got := x.salt.Dissolves(x.metal)
		low, _ := got.Ends()
		if !within(got.SI*3.6e6, x.usual, 1e-5) || !within(low*3.6e6, x.low, 1e-5) || got.Spread() != (x.low < x.usual) {
			t.Errorf("%s: %.5f, %.5f g/(A.h), want %.5f, %.5f", x.name, got.SI*3.6e6, low*3.6e6, x.usual, x.low)
		}
	}
}

func TestCommonSaltBath(t *testing.T) {
	run := Run{CommonSalt, alloy(metal.Part{Symbol: "Cu", Share: 100}), ampereHour, 1}
	if _, ok := known(run.Deposit()); ok {
		t.Error("common salt plates")
	}
	if _, ok := known(run.Lost()); ok {
		t.Error("common salt loses its metal")
	}
	if _, ok := known((Run{CopperSulfate, run.Metal, ampereHour, 1}).Hydrogen()); ok {
		t.Error("copper sulfate gives hydrogen")
	}
	if got := run.removed() / gram; math.Abs(got-2.371) > 5e-4 { // 63.546/96485.332 x 3600, Cu(I); computed
		t.Errorf("%g g of copper in an ampere hour", got)
	}
	got, ok := known(run.Hydrogen())
	if !ok || math.Abs(got/litre-0.449) > 5e-4 { // a figure of the trade, derived by another hand
		t.Errorf("%.5f L of hydrogen", got/litre)
	}
	if want := 22.414 * litre * 293.15 / 273.15 / 2 / 96485.332 * ampereHour; !within(got, want, 2e-5) { // a mole of an ideal gas at 0 C and 101.325 kPa, handbooks (from memory)
		t.Errorf("%.6f L of hydrogen, want %.6f", got/litre, want/litre)
	}
}

// What brings the metal back brings back the bath: by another way, mixed with
// salt of that assay it holds just what was lost.
func TestSaltToAdd(t *testing.T) {
	for _, salt := range salts {
		if salt.Metal == "" {
			continue
		}
		for _, assay := range []float64{1, 0.98, 0.5} {
			mix := solution(t, salt, say(10, quantity.Density), room20).Mix(litre, assay)
			got, ok := known(salt.SaltToAdd(mix.MetalMass, assay))
			if !ok || !within(got, mix.SaltMass, 1e-9) {
				t.Errorf("%s of %g: %g kg bring back %g kg, want %g", salt.Name, assay, got, mix.MetalMass, mix.SaltMass)
			}
		}
		for _, x := range [][2]float64{{0, 1}, {-1, 1}, {1, 0}, {1, 2}, {math.Inf(1), 1}, {math.NaN(), 1}, {1, math.NaN()}} {
			if got, ok := known(salt.SaltToAdd(x[0], x[1])); ok || got != 0 {
				t.Errorf("%s of %g: %g kg bring back %g", salt.Name, x[1], got, x[0])
			}
		}
	}
}

func TestPiecesToTenth(t *testing.T) {
	for _, x := range []struct {
		pieces, share, want float64
		ok                  bool
	}{
		// floor(10 pieces / per cent), by hand
		{1, 0.03, 3, true}, {2, 0.03, 6, true}, {1, 0.1, 1, true}, {1, 0.101, 0, true}, {3, 0.1, 3, true}, {7, 0.0123, 56, true},
		{1, 0, 0, false}, {1, -0.01, 0, false}, {1, math.NaN(), 0, false}, {math.NaN(), 0.1, 0, false}, {1, 5e-324, 0, false},
	} {
		if got, ok := known(PiecesToTenth(x.pieces, x.share)); ok != x.ok || ok && got != x.want {
			t.Errorf("%g pieces take %g: %g, %v, want %g", x.pieces, x.share, got, ok, x.want)
		}
	}
}

// What was etched before counts by its own charge: so much dissolved, so much
// gained, whatever the efficiency.
func TestEtchedBefore(t *testing.T) {
	brass := catalogued(t, "cuzn30")
	run := Run{CopperSulfate, brass, 2 * ampereHour, 0.93}
	all := run.After(50 * gram)
	if got := all.removed() - run.removed(); !within(got, 50*gram, 1e-12) {
		t.Errorf("%g g etched before", got/gram)
	}
	if got := all.Gained("Zn") - run.Gained("Zn"); !within(got, 15*gram, 1e-12) { // 30 % of it
		t.Errorf("%g g of zinc from before", got/gram)
	}
	for _, etched := range []float64{0, -1, math.NaN()} {
		if got := run.After(etched); got != run {
			t.Errorf("%g kg etched before make %+v of %+v", etched, got, run)
		}
	}
}

// A run that can't be has no result.
func TestNoRun(t *testing.T) {
	silicon := alloy(metal.Part{Symbol: "Si", Share: 100})
	for _, salt := range salts {
		for _, run := range []Run{
			{salt, catalogued(t, "cuzn30"), 0, 1}, {salt, catalogued(t, "cuzn30"), -1, 1}, {salt, catalogued(t, "cuzn30"), math.NaN(), 1},
			{salt, catalogued(t, "cuzn30"), math.Inf(1), 1}, Run{salt, silicon, 0, 1}.After(1), Run{salt, catalogued(t, "cuzn30"), 0, 0}.After(1),
			Run{salt, catalogued(t, "cuzn30"), 0, math.NaN()}.After(1), Run{salt, catalogued(t, "cuzn30"), 0, 1}.After(math.Inf(1)),
		} {
			deposit := run.Deposit().SI
			lost := run.Lost().SI
			hydrogen := run.Hydrogen().SI
			for i, x := range []float64{run.removed(), deposit, lost, run.Gained("Zn"), run.Sludge(), hydrogen} {
				if x != 0 {
					t.Errorf("%s, %g C at %g: figure %d is %g", salt.Name, run.Charge, run.Efficiency, i, x)
				}
			}
		}
		for _, efficiency := range []float64{0, -1, math.NaN(), math.Inf(1)} {
			run := Run{salt, catalogued(t, "cuzn30"), ampereHour, efficiency}
			if run.removed() != 0 || run.Gained("Zn") != 0 || run.Sludge() != 0 {
				t.Errorf("%s: an efficiency of %g dissolves %g", salt.Name, efficiency, run.removed())
			}
		}
		if got := (Run{salt, silicon, ampereHour, 1}).removed(); got != 0 {
			t.Errorf("%s dissolves %g kg of silicon", salt.Name, got)
		}
	}
}
