package circuit_test

import (
	"fmt"

	"saltbite/calc/circuit"
)

// A metre of copper wire of 1 mm and back. By hand: 2 m / (58 MS/m x 0.7854 mm2)
// is 43.9 milliohms.
func ExampleWire() {
	lead := circuit.Wire{Diameter: 1e-3, Length: 2, Resistivity: circuit.Copper}
	fmt.Printf("%.1f mohm, %.2f V at 3 A, at most %.1f A for hours\n", lead.Resistance().SI*1000, lead.Drop(3).SI, lead.Limit().SI)
	// Output:
	// 43.9 mohm, 0.13 V at 3 A, at most 3.9 A for hours
}

// Ohm's law by hand: (3 V - 0.2 V) / (0.9 + 0.1) ohm is 2.8 A.
func ExampleSupply_Unlimited() {
	fmt.Println(circuit.Supply{Volts: 3}.Unlimited(0.9, 0.1, 0.2).SI, "A")
	// Output:
	// 2.8 A
}
