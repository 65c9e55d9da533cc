package quantity

import "testing"

// Letters as the languages of the trade write them; common knowledge. Each row is
// letters that all stand for the same.
func TestPlain(t *testing.T) {
	for plain, letters := range map[string]string{
		"a": "àáâãäåāăąÀÁÂÃÄÅĀĂĄ", "c": "çćčÇĆČ", "d": "ďđĎĐ", "e": "èéêëēĕėęěÈÉÊËĒĔĖĘĚ", "g": "ğĞ", "i": "ìíîïīĭįıİÌÍÎÏ",
		"l": "łľŁĽ", "n": "ñńňÑŃŇ", "o": "òóôõöøōŏőÒÓÔÕÖØŌŎŐ", "r": "řŕŘŔ", "s": "śšşŚŠŞſ", "t": "ťţŤŢ", "u": "ùúûüūŭůűÙÚÛÜŪŬŮŰ",
		"y": "ýÿÝŸ", "z": "źżžŹŻŽ", "ss": "ß", "ae": "æÆ", "oe": "œŒ",
		"": "az09 -°µ×÷þĸĲŊƀ¿жλ銀\u0301\x00",
	} {
		for _, r := range letters {
			if got := Plain(r); got != plain {
				t.Errorf("%c is %q, want %q", r, got, plain)
			}
		}
	}
	if Plain(-1) != "" || Plain(0x10FFFF) != "" {
		t.Error("a rune outside the table stands for a letter")
	}
}
