package bath_test

import (
	"fmt"

	"saltbite/calc/bath"
	"saltbite/calc/quantity"
)

// Two litres at 250 g/L of crystals, 97 % pure. By hand: 500 g / 0.97 is 515 g,
// and 500 g x 63.546 / 249.68 is 127 g of copper.
func ExampleSolution_Mix() {
	salt, _ := bath.FindSalt("bluestone")
	liquid, err := salt.Solution(quantity.Quantity{Value: 250, Kind: quantity.Density}, 293.15)
	if err != nil {
		fmt.Println(err)
		return
	}
	mix := liquid.Mix(2e-3, 0.97)
	fmt.Printf("weigh %.0f g of salt; in it is %.0f g of copper\n", mix.SaltMass*1000, mix.MetalMass*1000)
	// Output:
	// weigh 515 g of salt; in it is 127 g of copper
}

func ExampleFindSalt() {
	salt, _ := bath.FindSalt("silver nitrat")
	fmt.Println(salt == bath.SilverNitrate)
	_, err := bath.FindSalt("ferric chloride")
	fmt.Println(err == bath.UnknownSalt)
	// Output:
	// true
	// true
}
