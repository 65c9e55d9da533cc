//go:build unix

package artwork

import (
	"syscall"
	"time"
)

// atWork is how long the processor has been at work for this process.
func atWork() time.Duration {
	var used syscall.Rusage
	if err := syscall.Getrusage(syscall.RUSAGE_SELF, &used); err != nil {
		panic(err)
	}
	return time.Duration(used.Utime.Nano() + used.Stime.Nano())
}
