package site

import (
	"bytes"
	"compress/gzip"
	"io"
	"slices"
	"strings"
	"testing"

	"saltbite/calc/field"
)

func TestOneFileHoldsAllThatThePageNames(t *testing.T) {
	files := Files{"a.css": []byte("b{}"), "b.js": []byte("let a = '&<b'"), "i.svg": []byte("<svg/>"),
		"saltbite.wasm": []byte("\x00asm")}
	page := `<meta http-equiv="Content-Security-Policy" content="default-src 'none'; script-src 'self' 'wasm-unsafe-eval'; style-src 'self'; connect-src 'self'; img-src 'self' data:; worker-src blob:">
<link rel="icon" href="i.svg">
<link rel="manifest" href="app.webmanifest">
<link rel="stylesheet" href="a.css?v=1" integrity="sha256-x">
<script type="module" src="b.js?v=1" integrity="sha256-y"></script>
<body></body>`
	// The hashes are those of `printf %s ... | openssl dgst -sha256 -binary | base64`.
	want := `<meta http-equiv="Content-Security-Policy" content="default-src 'none'; script-src 'sha256-S6lauMbHPbWoE7Xrbv0F3TL5qw1J40hBBaKGzT0ogqc=' 'wasm-unsafe-eval'; style-src 'sha256-7yqHVAesot11p6HczDsgKRipvI5UPgs97z80zNXlans='; img-src data:; worker-src blob:">
<link rel="icon" href="data:image/svg+xml;base64,PHN2Zy8+">
<style>b{}</style>
<script type="module">let a = '&<b'</script>
<body><script type="text/plain" id="saltbite.wasm">`
	got, err := files.inlined([]byte(page))
	if err != nil || !strings.HasPrefix(string(got), want) {
		t.Errorf("%v, %s", err, got)
	}
}

func TestOneFileRefusesWhatItCannotHold(t *testing.T) {
	for what, page := range map[string]string{
		"a file that there is not":   `<link rel="stylesheet" href="none.css">` + "\n",
		"a script that ends early":   `<script src="ends.js"></script>`,
		"a style that ends early":    `<link rel="stylesheet" href="ends.css">` + "\n",
		"a picture left outside":     `<img alt="" src="tablet.png">`,
		"a link in no usual writing": `<link href="dark.css" rel="stylesheet">`,
	} {
		files := Files{"ends.js": []byte("'</SCRIPT>'"), "ends.css": []byte("a::before{content:'</style>'}"), "tablet.png": nil}
		if got, err := files.inlined([]byte(page)); err == nil {
			t.Errorf("%s: %s", what, got)
		}
	}
}

// An attribute of the element that every element has would mean two things:
// those are from the HTML standard, 3.2.6.
func TestNoFieldIsAnAttributeOfEveryElement(t *testing.T) {
	global := strings.Fields(`accesskey autocapitalize autocorrect autofocus class contenteditable dir draggable
		enterkeyhint hidden id inert inputmode is itemid itemprop itemref itemscope itemtype lang nonce popover role slot
		spellcheck style tabindex title translate writingsuggestions lock show theme`)
	lower := map[string]string{}
	for _, f := range field.Fields {
		name := strings.ToLower(f.Name)
		if slices.Contains(global, name) || strings.HasPrefix(name, "on") || lower[name] != "" {
			t.Errorf("the field %s can be no attribute", f.Name)
		}
		lower[name] = f.Name
	}
}

func TestGzipNotesNoTime(t *testing.T) {
	packed := gzipBest([]byte("bath"))
	// RFC 1952, 2.3: the time stands in the bytes from the fifth to the eighth.
	if !bytes.Equal(packed[4:8], make([]byte, 4)) || !bytes.Equal(packed, gzipBest([]byte("bath"))) {
		t.Errorf("packed as %x", packed)
	}
	r, err := gzip.NewReader(bytes.NewReader(packed))
	if err != nil {
		t.Fatal(err)
	}
	if body, err := io.ReadAll(r); err != nil || string(body) != "bath" {
		t.Errorf("%q, %v", body, err)
	}
}
