//go:build long || !js

package main

import (
	"strings"
	"testing"
)

// The maps stand in the bytes one after the other; what does not fit them draws nothing.
func TestAlong(t *testing.T) {
	const fields = "\nmetal=copper&width=40&depth=0.2"
	open := []byte{255, 0, 0, 255}
	solved := append([]byte{}, open...)
	solved = append(solved, 0, 0, 0xc0, 0x3f, 0, 0, 0, 0x3f) // 1.5 and 0.5 (IEEE 754)
	for _, c := range []struct {
		head string
		data []byte
		want string
	}{
		{"4 1 0 0 0 0.5 1 0.5", open, "how even it will be is not worked out yet"},
		{"4 1 2 1 0 0.5 1 0.5", solved, "from 0.10 mm to 0.30 mm deep"},
		{"4 1 2 1 0 NaN 1e300 0.5", solved, "from 0.10 mm to 0.30 mm deep"}, // as far as the picture goes
		{"4 1 2 1", open, "{"},
		{"-4 -1 0 0", open, "{"},
		{"4 1 NaN 1e300 0 0.5 1 0.5", open, "{"},
		{"", nil, "{"},
	} {
		text, out := along(c.head+fields, c.data, func(float64) {})
		if !strings.Contains(text, c.want) || (c.want == "{") == strings.Contains(text, `"drawing"`) || out != nil {
			t.Errorf("%q: %s", c.head, text)
		}
	}
}
