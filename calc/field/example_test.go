package field_test

import (
	"fmt"

	"saltbite/calc/field"
)

func ExampleRead() {
	set := field.Read("depth=0%2C2+mm&time=2+h+30&pieces=")
	fmt.Printf("%.4f m, %.0f s\n", set.Amount(field.Depth).SI, set.Amount(field.Time).SI)
	for _, e := range field.Read("depth=3+min").Errors() {
		fmt.Println(e.Field, e.Code)
	}
	// Output:
	// 0.0002 m, 9000 s
	// depth unit
}
