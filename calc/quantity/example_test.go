package quantity_test

import (
	"errors"
	"fmt"

	"saltbite/calc/quantity"
)

// Brown & Sharpe 18 is 0.0403 in (ASTM B258, from memory), which is 1.024 mm.
func ExampleRead() {
	for _, text := range []string{"0,2", "1/16 in", "18 ga", "3 min", "1,234"} {
		q, err := quantity.Read(text, "mm", quantity.Length)
		var wrong *quantity.Error
		if errors.As(err, &wrong) {
			fmt.Println(text, "|", wrong.Code)
			continue
		}
		fmt.Println(text, "|", quantity.Print(q.Value, q.Kind, "mm"))
	}
	// Output:
	// 0,2 | 0.200 mm
	// 1/16 in | 1.59 mm
	// 18 ga | 1.02 mm
	// 3 min | unit
	// 1,234 | ambiguous
}

func ExamplePrint() {
	fmt.Println(quantity.Print(9069, quantity.Time, "min"))
	fmt.Println(quantity.Print(quantity.Of(1, "in"), quantity.Length, "mm"))
	// Output:
	// 2 h 31 min
	// 25.4 mm
}
