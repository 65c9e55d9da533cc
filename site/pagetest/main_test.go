package pagetest

import (
	"os"
	"testing"

	"saltbite/build/browser"
)

func TestMain(m *testing.M) {
	failed := m.Run()
	browser.CloseIdle()
	os.Exit(failed)
}
