package text

import (
	"testing"

	"github.com/stretchr/testify/require"
)

func TestComma(t *testing.T) {
	for in, want := range map[string]string{
		"bust 92.5 / 4 + ease 6.4 / 4 = 24.7 cm":         "bust 92,5 / 4 + ease 6,4 / 4 = 24,7 cm",
		"= 92.7 cm.":                                     "= 92,7 cm.",
		"(92.5) 92.5, -0.5 2.5cm ~3":                     "(92,5) 92,5, -0,5 2,5cm ~3",
		"\x1b[0;1;38;5;12m92.5\x1b[0m 1.5":               "\x1b[0;1;38;5;12m92,5\x1b[0m 1,5",
		"anna.2.5.toml a4.5 /home/x/1.5 v1.2 2026.03.04": "anna.2.5.toml a4.5 /home/x/1.5 v1.2 2026.03.04",
		"36 1/2. Next":                                   "36 1/2. Next",
		"ISO 8559-1:2017":                                "ISO 8559-1:2017",
		"⠿92.5 ½.5 5. .5 .":                              "⠿92,5 ½.5 5. .5 .",
		"":                                               "",
	} {
		require.Equal(t, want, Comma(in), in)
	}
}
