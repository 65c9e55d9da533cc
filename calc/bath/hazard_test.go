package bath

import (
	"strings"
	"testing"

	"saltbite/testdata"
)

// The signal word and the codes of each salt are those of the table, whose
// every row names its source.
func TestHazardsAsPublished(t *testing.T) {
	published := map[string]testdata.Row{}
	for _, row := range testdata.Sourced(t, "ghs.csv") {
		published[row["substance"]] = row
	}
	for substance, salt := range map[string]*Salt{
		"copper(II) sulfate pentahydrate": CopperSulfate, "copper(II) sulfate anhydrous": CopperSulfateAnhydrous,
		"silver nitrate": SilverNitrate, "sodium chloride": CommonSalt,
	} {
		row, ok := published[substance]
		signal, codes := salt.Hazards()
		if !ok || row["signal"] != signal || row["codes"] != strings.Join(codes, " ") {
			t.Errorf("%s: %s %v; the table says %s %s", substance, signal, codes, row["signal"], row["codes"])
		}
		for _, code := range codes {
			if Statement(code) == "" {
				t.Errorf("%s: %s has no words", substance, code)
			}
		}
	}
}
