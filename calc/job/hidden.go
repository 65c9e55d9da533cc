package job

import (
	"saltbite/calc/bath"
	"saltbite/calc/bite"
	"saltbite/calc/field"
)

// hiddenFound is the bare metal under the surface that is easily forgotten.
type hiddenFound struct {
	onPiece  number // m2 of one piece: edges and back
	onHanger number // m2 of one piece's hanger
	eaten    bool   // the hanger dissolves
}

// inert hangers take no current where no chloride breaks their oxide (common
// practice, no source); these must never hang on the positive side.
var forbiddenHangers = map[string]string{
	"stainless":  "Stainless steel dissolves on the positive side, and leaves chromium(VI) and nickel in the bath",
	"plated":     "Plating dissolves on the positive side, and what is under it after it",
	"galvanised": "Zinc and the steel under it dissolve on the positive side, and foul the bath",
}

// workHidden finds the hidden metal, as far as it is described.
func (b *bench) workHidden() {
	h := &b.hidden
	wire, wetted := b.amount("hanger"), b.amount("hangerLength")
	edges, sheet, back := b.amount("bareEdges"), b.amount("sheet"), b.amount("back")
	h.eaten = b.hangerIsEaten()
	h.onPiece = sum(number{bite.Hidden{Edges: edges.v, Sheet: sheet.v}.OnPiece(), worst(edges, sheet)}, b.onBack(back))
	h.onHanger = number{bite.Hidden{Hanger: wire.v, Wetted: wetted.v}.OnHanger(), worst(wire, wetted)}
	if !h.eaten {
		h.onHanger.v = 0
	}
	if found := sum(h.onPiece, h.onHanger); found.known() {
		b.put("extraFound", found.v)
	}
	b.needBeside("hanger", "hangerLength")
	b.needBeside("bareEdges", "sheet")
}

// onBack is the share of one face that is bare on the back.
func (b *bench) onBack(share number) number {
	if share.state == field.Blank {
		return number{}
	}
	face := b.face()
	return number{bite.Hidden{Back: share.v, Face: face.v}.OnPiece(), worst(share, face)}
}

// sum adds what is there; it is Bad if a part is, Blank if all are.
// Kept out of its callers for the size of the program.
//
//go:noinline
func sum(parts ...number) number {
	var all number
	for _, p := range parts {
		switch {
		case p.state == field.Bad:
			return p
		case p.known():
			all = known(all.v + p.v)
		}
	}
	return all
}

// needBeside asks for one of two fields where the other is given.
func (b *bench) needBeside(one, other string) {
	if b.amount(one).state == field.Given && b.amount(other).state == field.Blank {
		b.need(other)
	}
	if one == "hanger" && b.amount(other).state == field.Given && b.amount(one).state == field.Blank {
		b.need(one)
	}
}

// hangerIsEaten says whether the hanger dissolves with the work. Aluminium does
// so in common salt only.
func (b *bench) hangerIsEaten() bool {
	metal := b.fields.Value("hangerMetal").Pick
	return metal != "aluminium" || b.inCommonSalt()
}

// answerHidden answers what the hidden metal does to the bite, and the bite to
// the hanger.
func (b *bench) answerHidden() {
	w, h := &b.bite, &b.hidden
	if b.blocked() || !w.depth.known() {
		return
	}
	if w.area.known() && w.shape != field.Bad && w.work.Extra > 0 {
		b.put("depthIfForgotten", b.piece().DepthIfForgotten(w.depth.v))
	}
	if wire := b.amount("hanger"); wire.known() && h.eaten && forbiddenHangers[b.fields.Value("hangerMetal").Pick] == "" {
		b.put("hangerLeft", bite.HangerLeft(wire.v, w.depth.v))
	}
}

func (b *bench) warnOfHanger() {
	hung := b.amount("hanger").state == field.Given || b.fields.Value("hangerMetal").State == field.Given
	metal := b.fields.Value("hangerMetal").Pick
	why := forbiddenHangers[metal]
	if metal == "aluminium" && b.salt.salt == bath.CommonSalt {
		why = "Aluminium dissolves in common salt, with gas"
	}
	if hung && why != "" {
		b.raise("stainless", Stop, "hangerMetal",
			why+". Hang the work by a wire of its own metal, painted or sleeved down to the piece, and join clip and lead above the surface.",
			"Hang it by its own metal; clips above the surface")
	}
	left, ok := b.figures["hangerLeft"]
	if wire := b.amount("hanger"); ok && left.si < wire.v/2 {
		what := b.text("hangerLeft") + " of the hanger's " + b.say("hangerLeft", wire.v) + " would be left"
		if left.si <= 0 {
			what = "The hanger is eaten through before the end"
		}
		b.raise("hanger", Warn, "hanger", what+", and the piece drops. Take a thicker wire, or coat it down to the piece.",
			"Hanger nearly eaten: thicker wire, or coat it")
	}
}
