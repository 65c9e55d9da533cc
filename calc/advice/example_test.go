package advice_test

import (
	"fmt"

	"saltbite/calc/advice"
	"saltbite/calc/field"
	"saltbite/calc/job"
)

// The copper job of calc/bite's example: 151 min at 0.3 A.
func ExampleAnswer() {
	reply := advice.Answer(job.Work(field.Read("metal=copper&metalDensity=8.96&area=10+cm2&depth=0.1+mm&density=30+mA/cm2")))
	fmt.Println(reply.Sentence)
	for _, figure := range reply.Answers {
		if figure.Name == "time" || figure.Name == "current" {
			fmt.Println(figure.Name, figure.Text)
		}
	}
	// Output:
	// Leave it 2 h 31 min at 0.300 A in copper sulfate to etch 0.1 mm into copper.
	// time 2 h 31 min
	// current 0.300 A
}
