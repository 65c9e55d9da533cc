package check

import (
	"strings"
	"testing"

	"saltbite/build/site"
)

func TestSitesThatDifferAreTold(t *testing.T) {
	a := site.Files{"same": []byte("1"), "other": []byte("2"), "only here": nil}
	err := sameSite(a, site.Files{"same": []byte("1"), "other": []byte("3"), "only there": []byte("4")})
	if err == nil || !strings.Contains(err.Error(), "dist/other") || !strings.Contains(err.Error(), "dist/only there") || strings.Contains(err.Error(), "dist/same") {
		t.Errorf("what differs is %v", err)
	}
	if err := sameSite(a, a); err != nil {
		t.Error(err)
	}
}
