package picture

import (
	_ "embed"
	"encoding/json"
	"fmt"
	"maps"
	"slices"
	"strconv"
	"strings"
	"testing"

	"saltbite/calc/evenness"
	"saltbite/calc/field"
	"saltbite/testdata"
)

// replies is all that is said of some pictures, numbers to four figures. The same picture
// is told the same natively, in WebAssembly, and in the next version: what a change shifts
// by less than the other tests allow is seen here. It proves no
// figure right: the other tests do. The pictures are invented. It is written with
// SALTBITE_WRITE=1 go test ./calc/picture -run Written.
//
//go:embed testdata/replies.txt
var replies string

func TestRepliesAsWritten(t *testing.T) {
	tag := drawn(120, 90, []int{10, 10, 40, 30}, []int{60, 10, 3, 70}, []int{75, 20, 30, 50}, []int{15, 55, 25, 2}, []int{108, 8, 2, 74})
	var told strings.Builder
	tell := func(name string, reply any) { fmt.Fprintf(&told, "%s:\n%s", name, listed(t, reply)) }
	for _, fields := range []string{
		"width=60&depth=0.2&undercut=1&line=0.5&sheet=0.8",
		"height=45&black=etches&sides=2&units=us&depth=1.2&undercut=1",
		"diameter=40&metal=brass&depth=0.1",
		"",
	} {
		tell("measured, "+fields, Measured(Measure(tag, field.Read(fields), quiet)))
		tell("printed, "+fields, Prepared(Prepare(tag, field.Read(fields+"&dpi=100"), quiet)))
	}
	for _, fields := range []string{
		"width=60&gap=25&strength=150&metal=copper&density=30&depth=0.2&sheet=0.5&line=0.5&undercut=1",
		"width=60&metal=sterling&salt=silver+nitrate&depth=0.15&units=us&vesselWidth=150&fill=120",
		"width=60&gap=60&metal=cartridge+brass&until=least&depth=0.1&sides=2&time=90",
		"width=60&metal=copper&black=etches&volts=3&amps=1",
	} {
		e := even(tag, field.Read(fields), 96, quiet)
		tell("even, "+fields, EvenSaid(e))
		tell("distances, "+fields, DistancesSaid(distances(tag, field.Read(fields), 64, quiet)))
		if !e.Known {
			continue
		}
		line := Line{evenness.Place{X: 0.05, Y: 0.2}, evenness.Place{X: 0.95, Y: 0.7}}
		tell("along, "+fields, Along(e.Art.Map, e.Result.Map, line, field.Read(fields)))
	}
	if changed, err := testdata.Changed("testdata/replies.txt", replies, told.String()); changed != "" || err != nil {
		t.Fatal(changed, err)
	}
}

// listed is a reply as lines, each a name and its value, but for maps and what is empty.
func listed(t *testing.T, reply any) string {
	written, err := json.Marshal(reply)
	if err != nil {
		t.Fatal(err)
	}
	var parts map[string]any
	if err := json.Unmarshal(written, &parts); err != nil {
		t.Fatal(err)
	}
	delete(parts, "Map") // packages artwork and evenness have them written down
	delete(parts, "Levels")
	var lines strings.Builder
	for _, name := range slices.Sorted(maps.Keys(parts)) {
		list, ok := parts[name].([]any)
		if !ok {
			list = []any{parts[name]}
		}
		for _, one := range list {
			if value := inShort(one); value != "" {
				fmt.Fprintf(&lines, "  %s %s\n", name, value)
			}
		}
	}
	return lines.String()
}

// inShort is a value of JSON with its numbers to four figures; "" where it holds nothing.
func inShort(value any) string {
	switch value := value.(type) {
	case nil:
		return ""
	case float64:
		return strconv.FormatFloat(value, 'g', 4, 64)
	case map[string]any:
		var parts []string
		for _, name := range slices.Sorted(maps.Keys(value)) {
			if said := inShort(value[name]); said != "" {
				parts = append(parts, name+" "+said)
			}
		}
		return strings.Join(parts, ", ")
	case []any:
		var parts []string
		for _, one := range value {
			parts = append(parts, inShort(one))
		}
		return strings.Join(parts, "; ")
	}
	return fmt.Sprint(value)
}
