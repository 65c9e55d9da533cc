package drawing_test

import (
	_ "embed"
	"fmt"
	"strings"
	"testing"

	"saltbite/calc/advice"
	"saltbite/calc/drawing"
	"saltbite/calc/field"
	"saltbite/calc/job"
	"saltbite/testdata"
)

// drawn is every shape of the drawings of some jobs. A change is looked at on the page
// and on paper, and then written with SALTBITE_WRITE=1 go test ./calc/drawing -run Drawn.
//
//go:embed testdata/drawn.txt
var drawn string

// drawnJobs have between them all that a drawing can hold. Invented.
var drawnJobs = []string{
	"metal=cartridge+brass&width=150&height=25&open=1/3&sheet=18+ga&line=0.6&space=0.4&depth=0.2&density=30&volts=12&amps=1&salt=copper+sulfate&strength=150&volume=2&start=14:00&before=24.6+g&gap=60&cathode=50+cm2&seen=pink",
	"metal=sterling&area=10&depth=0.1&density=20&sheet=1+mm&sides=2&line=0.15&space=0.3&undercut=1&units=us&strength=40&volume=2&mixed=3+May&etched=20",
	"metal=copper&area=10&depth=0.2&current=0.3&sheet=1&readings=0:00+0.3;+1:00+0.28&hanger=1&hangerLength=20",
	"metal=copper&bites=0.1+10;+0.2+8&density=30&sheet=1+mm",
	"metal=sterling&salt=copper+sulfate&area=10&depth=0.1&density=20",
}

// TestDrawn compares the drawings with what is written down.
func TestDrawn(t *testing.T) {
	var told strings.Builder
	for _, fields := range drawnJobs {
		d := advice.Draw(job.Work(field.Read(fields)))
		for _, of := range []struct {
			name    string
			drawing *drawing.Drawing
		}{{"section", d.Section}, {"curve", d.Curve}, {"card", d.Card}, {"back", d.Back}, {"label", d.Label}} {
			told.WriteString(listed(of.name+" of "+fields, of.drawing))
		}
	}
	if changed, err := testdata.Changed("testdata/drawn.txt", drawn, told.String()); changed != "" || err != nil {
		t.Fatal(changed, err)
	}
}

// listed is a drawing as lines, one for each shape.
func listed(name string, d *drawing.Drawing) string {
	if d == nil {
		return name + ": none\n"
	}
	var lines strings.Builder
	fmt.Fprintf(&lines, "%s: %.2f by %.2f %s %s\n", name, d.Width, d.Height, d.Metal, d.Title)
	for _, s := range d.Shapes {
		if s.Path != "" {
			fmt.Fprintf(&lines, "  %s %s %v\n", s.Role, s.Path, s.Dash)
			continue
		}
		fmt.Fprintf(&lines, "  %s %q at %.2f %.2f size %.2f %s %v\n", s.Role, s.Text, s.X, s.Y, s.Size, s.Anchor, s.Strong)
	}
	return lines.String()
}
