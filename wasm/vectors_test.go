package main

import (
	"strings"
	"testing"

	"saltbite/testdata"
)

// The vectors go through the border itself, natively and in wasm.
func TestVectors(t *testing.T) {
	vectors, err := testdata.Vectors()
	if err != nil {
		t.Fatal(err)
	}
	for _, v := range vectors {
		t.Run(v.Name, func(t *testing.T) {
			if wrong := v.Check(answer(v.Text())); len(wrong) > 0 {
				t.Errorf("%v\n%s", v.Fields, strings.Join(wrong, "\n"))
			}
		})
	}
}
