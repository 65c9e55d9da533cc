package metal_test

import (
	"fmt"

	"saltbite/calc/metal"
)

func ExampleUnderstand() {
	r, err := metal.Understand("yelow bras")
	fmt.Println(r.Metal.Name, "|", r.Why, "|", err)

	_, err = metal.Understand("Zink")
	fmt.Println(err)

	_, err = metal.Understand("Cu 85 Zn 10")
	fmt.Println(err)
	// Output:
	// Yellow brass 65/35 | sounds like yellow brass | <nil>
	// “Zink” is zinc. This calculator doesn't cover it: it needs other baths
	// the shares in “Cu 85 Zn 10” add up to 95 %, not 100 %
}

func ExampleFind() {
	for _, h := range metal.Find("commercial bronze") {
		fmt.Println(h.Metal.ID, "|", h.Why, "|", h.Remark)
	}
	// Output:
	// cuzn10 | name | commercial bronze is a brass: no tin
}

func ExampleMetal_Equivalent() {
	sterling, _ := metal.Understand("sterling")
	fmt.Printf("%.3f g in an ampere-hour\n", sterling.Metal.Equivalent()*1000*3600)
	// Output:
	// 3.412 g in an ampere-hour
}
