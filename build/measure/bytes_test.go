package measure

import (
	"fmt"
	"testing"
)

func TestPackageOfAName(t *testing.T) {
	written := asLinked([]string{"main", "fmt", "net/url", "slices", "github.com/hack-pad/safejs", "github.com/hack-pad/safejs/internal/x"})
	for name, want := range map[string]string{ // names as go1.26's linker writes them into a WebAssembly file
		"net_url.ParseQuery":                    "net/url",
		"fmt.__pp_.printValue":                  "fmt",
		"slices.SortFunc_go.shape.__a_b.T_":     "slices",
		"type_.eq.internal_abi.RegArgs":         "equality and hashes of types",
		"github.com_hack_pad_safejs.Value.Set":  "github.com/hack-pad/safejs",
		"github.com_hack_pad_safejs.Func.Value": "github.com/hack-pad/safejs",
		"main.main":                             "main",
		"wasm_export_run":                       "start and glue",
	} {
		if got := packageOf(name, written); got != want {
			t.Errorf("the package of %s is %q, want %q", name, got, want)
		}
	}
}

func TestSharesOfAFile(t *testing.T) {
	file := "\x00asm\x01\x00\x00\x00" + // written by hand after the WebAssembly specification
		"\x02\x07\x01\x01a\x01b\x00\x00" + // one imported function
		"\x0a\x08\x02\x03\x00\x01\x0b\x02\x00\x0b" + // two functions, of 3 and 2 bytes
		"\x0b\x04\x01abc" +
		"\x00\x16\x04name\x01\x0f\x02\x01\x05a_b.F\x02\x05a_b.G"
	shares, err := sharesOf([]byte(file), []string{"a/b"})
	if fmt.Sprint(shares) != "[{a/b 5} {data 4}]" {
		t.Errorf("the shares are %v, %v", shares, err)
	}
	if _, err := sharesOf([]byte("no such file"), nil); err == nil {
		t.Error("read what is no WebAssembly")
	}
	if _, err := sharesOf([]byte(file[:30]), nil); err == nil {
		t.Error("read half a file")
	}
}
