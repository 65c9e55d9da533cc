package site

import (
	"bytes"
	"net/url"
	"strings"
	"testing"

	"saltbite/calc/field"
	"saltbite/site/words"
)

func TestANameWithoutWordsFails(t *testing.T) {
	said := map[string]int{"depth": 1, "height": 2}
	err := alike("field", []string{"depth", "width"}, said)
	if err == nil || !strings.Contains(err.Error(), "width") || !strings.Contains(err.Error(), "height") {
		t.Errorf("width without words, words without height: %v", err)
	}
	if err := alike("field", []string{"depth", "height"}, said); err != nil {
		t.Error(err)
	}
	if err := everyNameHasWords(); err != nil {
		t.Error(err)
	}
}

func TestPageHasAControlForEveryField(t *testing.T) {
	html, err := pageHTML("../..", built{Version: "v1.2.3"})
	if err != nil {
		t.Fatal(err)
	}
	for _, f := range field.Fields {
		if n := bytes.Count(html, []byte(` name="`+f.Name+`"`)); n == 0 != words.Parts[string(f.Part)].OffPage {
			t.Errorf("the page has %d controls for %s", n, f.Name)
		}
	}
	for _, a := range field.Answers {
		if n := bytes.Count(html, []byte(`data-answer="`+a.Name+`"`)); n != 1 {
			t.Errorf("the page has %d places for the answer %s", n, a.Name)
		}
	}
	if !bytes.Contains(html, []byte("v1.2.3")) {
		t.Error("the page does not say its version")
	}
}

func TestEverySourceIsListedOnce(t *testing.T) {
	all := origins()
	listed := map[string]int{}
	for _, row := range all.Sources {
		listed[row.Key]++
		if row.Title == "" || url.PathEscape(row.Key) != row.Key {
			t.Errorf("a source %q has no title, or a key that is no id", row.Key)
		}
	}
	if len(listed) != len(words.Sources) || len(listed) != len(all.Sources) {
		t.Errorf("%d sources are listed, %d of them different, of %d", len(all.Sources), len(listed), len(words.Sources))
	}
	for i, a := range field.Answers {
		if o := all.Origins[i]; o.Name != a.Name || o.Label == "" || o.Formula == "" || len(o.Uses) != len(words.Origins[a.Name].Uses) {
			t.Errorf("the origin of %s is %+v", a.Name, o)
		}
	}
	if len(all.Cautions) != len(words.CautionOrigins) {
		t.Errorf("%d cautions are listed of %d", len(all.Cautions), len(words.CautionOrigins))
	}
	for id, m := range all.Metals {
		if m.Text == "" || m.Confidence == "" {
			t.Errorf("metal %s has no source", id)
		}
	}
}

func TestEveryFormOfFieldHasAName(t *testing.T) {
	for _, f := range field.Fields {
		if formNames[f.Form] == "" {
			t.Errorf("the form of %s has no name on the page", f.Name)
		}
	}
}
