//go:build !unix

package artwork

import "time"

var began = time.Now()

// atWork is how long this process has been there, which a busy machine draws out.
func atWork() time.Duration { return time.Since(began) }
