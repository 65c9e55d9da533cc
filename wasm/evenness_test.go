//go:build long || !js

package main

import (
	"encoding/binary"
	"encoding/json"
	"math"
	"strings"
	"testing"
)

// The reply holds no more than JSON can, and its bytes are the map: for each cell a
// depth of four bytes and a level of one, which is the depth in whole per cent.
func TestEvenness(t *testing.T) {
	heard := 0.0
	text, out := evened("\nwidth=40&gap=5&density=30&metal=copper&strength=200&depth=0.2", squarePNG(t), func(share float64) {
		if share < heard {
			t.Errorf("the progress went from %g back to %g", heard, share)
		}
		heard = share
	})
	var reply struct {
		pictureReply
		Rows struct {
			Spots []struct{ Across, Down float64 }
		}
		Map struct {
			Width, Height, First int
			Shades, Scale        []struct{ Text, Colour string }
		}
		Assumed []string
	}
	if err := json.Unmarshal([]byte(text), &reply); err != nil {
		t.Fatalf("%v in %s", err, text)
	}
	cells := reply.Map.Width * reply.Map.Height
	if heard != 1 || len(out) != 5*cells || len(reply.Map.Shades) == 0 || len(reply.Assumed) != 0 || reply.Fields["resistance"] == "" {
		t.Fatalf("heard %g, %d bytes for %d cells: %s", heard, len(out), cells, text)
	}
	for i, level := range out[4*cells:] {
		depth := math.Float32frombits(binary.LittleEndian.Uint32(out[4*i:]))
		if level != 255 && math.Abs(float64(level)-100*float64(depth)) > 0.5 {
			t.Fatalf("cell %d is %g deep, and its level is %d", i, depth, level)
		}
	}
	if middle := cells/2 + reply.Map.Width/2; out[4*cells+middle] != 0 {
		t.Error("the resist in the middle is etched")
	}
	nearer, _ := distances("\nwidth=40&gap=5&density=30&metal=copper&strength=200", squarePNG(t), func(float64) {})
	if !json.Valid([]byte(nearer)) || strings.Count(nearer, `"distance":`) != 5 || strings.Count(nearer, `"border":`) != 4 {
		t.Errorf("of other distances it says %s", nearer)
	}
	broken, _ := evened("\nwidth=40", []byte("no picture"), func(float64) {})
	if !strings.Contains(broken, `"code":"picture"`) {
		t.Errorf("of no picture it says %s", broken)
	}
}
