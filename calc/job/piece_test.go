package job

import (
	"math"
	"testing"
)

func TestFace(t *testing.T) {
	check(t, []want{
		{"width=60&height=40", "Face.Area", 24e-4, byHand + ": 6 x 4"},
		{"width=60", "Face.Area", none{}, "half a face"},
		{"diameter=30", "Face.Area", math.Pi / 4 * 9e-4, byHand},
		{"diameter=30&height=20&back=10", "Face.Area", none{}, vocab + ": round, or with a width"},
		{"", "Errors.height", "contradiction", vocab},
		{"", "Errors.diameter", "contradiction", vocab},
		{"", "Hidden.OnPiece", bad, "it needs the face"},
	})
}

// A piece of 40 x 25 x 1 mm on 20 mm of wire of 1 mm.
func TestHidden(t *testing.T) {
	const wire = "hanger=1+mm&hangerLength=20&"
	const piece = "width=40&height=25&sheet=1+mm&bareEdges=130&back=10+%25&"
	wet := math.Pi * 1e-3 * 20e-3
	check(t, []want{
		{cu + wire, "Hidden.OnHanger", wet, byHand + ": pi x 1 x 20 mm"},
		{"", "Hidden.Found", wet, byHand},
		{"", "Hidden.Wire", "copper", vocab},
		{cu + piece, "Hidden.OnPiece", 2.3e-4, byHand + ": 13 x 0.1 + 0.1 x 4 x 2.5"},
		{cu + piece + wire, "Hidden.Found", 2.3e-4 + wet, byHand},
		{"", "Bite.Work.Extra", 2.3e-4 + wet, byHand},
		{cu + piece + wire + "extra=1", "Bite.Work.Extra", 3.3e-4 + wet, byHand + ": and 1 cm2"},
		{cu + "width=40&height=25&sheet=1+mm&bareEdges=130", "Hidden.OnPiece", 1.3e-4, byHand + ": without a back"},
		{cu + "back=10", "Hidden.OnPiece", none{}, "the back of what?"},
		{cu + wire + "hangerMetal=aluminium", "Hidden.OnHanger", 0, choice + ": aluminium lasts in sulfate"},
		{"", "Hidden.Eaten", false, choice},
		{cu + wire + "hangerMetal=aluminium&salt=common+salt", "Hidden.OnHanger", wet, choice + ": and not in common salt"},
		{"metal=sterling&" + wire, "Hidden.Wire", "silver", vocab},
		{"metal=Ag+50+Cu+50&" + wire, "Hidden.Wire", "copper", vocab + ": no silver alloy"},
		{"metal=sterling&hangerMetal=brass&" + wire, "Hidden.Wire", "brass", "as typed"},
		{"hanger=1", "Errors.hangerLength", "missing", vocab},
		{"hangerLength=20", "Errors.hanger", "missing", vocab},
		{"bareEdges=20", "Errors.sheet", "missing", vocab},
		{wire + "bareEdges=20&sheet=1+mm", "Errors.sheet", none{}, "it was given"},
		{"", "Errors.hanger", none{}, "it was given"},
		{"", "Errors.hangerLength", none{}, "it was given"},
	})
}

// What the hidden metal does: 10 cm2 with 5 more. Without edges to undercut the
// depth is shared out by area.
func TestEffects(t *testing.T) {
	const etch = cu + "area=10&depth=0.3&current=0.3&extra=5&hanger=1+mm&"
	check(t, []want{
		{etch + "hangerLength=0.001", "Effects.DepthIfForgotten", 0.2e-3, byHand + ": 0.3 x 10 / 15"},
		{"", "Effects.HangerLeft", 0.4e-3, byHand + ": 1 - 2 x 0.3"},
		{etch + "hangerMetal=aluminium", "Effects.HangerLeft", none{}, choice + ": it lasts"},
		{etch + "hangerMetal=stainless", "Effects.HangerLeft", none{}, vocab + ": it must not hang there at all"},
		{etch + "hangerMetal=plated", "Effects.HangerLeft", none{}, vocab},
		{etch + "hangerMetal=galvanised", "Effects.HangerLeft", none{}, vocab},
		{etch + "salt=silver+nitrate", "Effects.HangerLeft", none{}, vocab + ": the wrong bath"},
		{cu + "area=10&depth=0.3&current=0.3", "Effects.DepthIfForgotten", none{}, "nothing to forget"},
		{cu + "area=10&depth=0.3&extra=5&edge=long", "Effects.DepthIfForgotten", none{}, "an edge that can't be read"},
	})
}

func TestPieces(t *testing.T) {
	check(t, []want{
		{"area=10&edge=100", "Bite.Work.Undercut", 0.5, choice},
		{"", "Bite.Work.Edge", 0.1, "as typed"},
		{"area=10&edge=100&undercut=much", "Bite.Shape", bad, "it can't be read"},
		{"area=10&undercut=much", "Bite.Shape", read, "no edge, no undercut to know"},
		{"area=10&pieces=3&extra=2", "Bite.Work.Pieces", 3, "as typed"},
		{"", "Loss.Bare", 36e-4, byHand + ": 3 x (10 + 2)"},
		{"area=10&pieces=some", "Loss.Bare", none{}, "it can't be read"},
		{"width=50&height=40&open=50&area=9.91", "Bite.Area", 9.91e-4, vocab + ": as typed, within 1 %"},
		{"width=50&height=40&open=50&area=9.8", "Bite.Area", none{}, vocab + ": 2 % off"},
		{"", "Errors.open", "contradiction", vocab},
		{"", "Errors.area", "contradiction", vocab},
		{"", "Errors.width", "contradiction", vocab},
		{"", "Errors.height", "contradiction", vocab},
	})
}
