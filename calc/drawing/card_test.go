package drawing

import (
	"strconv"
	"strings"
	"testing"
)

// A card says what its supply can do, unless nothing is to be etched at all.
func TestCardTellsItsSupply(t *testing.T) {
	const said = "it gives 2 A, which is enough."
	for _, c := range []struct {
		card Card
		told bool
	}{
		{Card{Title: "Brass", Supply: said}, true},
		{Card{Title: "Brass", Supply: said, Barred: true}, false},
		{Card{Title: "Brass"}, false},
	} {
		if got := strings.Contains(c.card.words(), supplyWord); got != c.told {
			t.Errorf("%+v: the supply is told: %v", c.card, got)
		}
	}
}

// Eight steps of stopping out stand on a card, in five columns that don't meet; of more
// the card says how many there are.
func TestCardOfManySteps(t *testing.T) {
	for _, n := range []int{mostStages, mostStages + 3} {
		card := Card{Title: "Brass"}
		for i := range n {
			card.Stops = append(card.Stops, Stage{Depth: strconv.Itoa(i+1) + "0 µm", Area: "5 cm²", Time: "9 min", Current: "150 mA"})
		}
		var more []string
		columns, rows := map[float64]bool{}, 0
		for _, s := range card.Draw().Shapes {
			switch {
			case strings.HasSuffix(s.Text, "more, on the page."):
				more = append(more, s.Text)
			case strings.HasSuffix(s.Text, " µm"):
				rows++
			}
			if s.Text == "1" || s.Text == "10 µm" || s.Text == "5 cm²" || s.Text == "9 min" || s.Text == "150 mA" {
				columns[s.X] = true
			}
		}
		want := []string{}
		if n > mostStages {
			want = []string{"And 3 more, on the page."}
		}
		if strings.Join(more, "|") != strings.Join(want, "|") || rows != mostStages {
			t.Errorf("of %d steps %d are told, and %q", n, rows, more)
		}
		if len(columns) < 5 {
			t.Errorf("five columns stand at %v", columns)
		}
	}
}

// The words of a card number its steps and its checks from 1, in their order.
func TestCardNumbersItsSteps(t *testing.T) {
	card := Card{Title: "Brass", Checks: []string{"Look at it.", "Weigh it."}}
	for _, depth := range []string{"50 µm", "80 µm"} {
		card.Stops = append(card.Stops, Stage{Depth: depth, Area: "5 cm²", Time: "9 min", Current: "150 mA"})
	}
	said := card.words()
	for _, want := range []string{"Step 1: 50 µm on 5 cm², 9 min at 150 mA", "Step 2: 80 µm on", "Check 1: Look at it.", "Check 2: Weigh it."} {
		if !strings.Contains(said, want) {
			t.Errorf("%q lacks %q", said, want)
		}
	}
}
