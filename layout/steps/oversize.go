package steps

import (
	"fmt"
	"strings"

	"sawbill/layout"
)

// oversize says of a part that is cut longer or wider than it is finished what its
// finished size is; it is empty where the shop allows for nothing. To its thickness
// it is planed.
func (w *worker) oversize(part *layout.Part) string {
	var larger []string
	for _, dim := range []struct {
		allowance, finished layout.Length
		word                string
	}{
		{w.shop.LengthAllowance, part.Length, "long"},
		{w.shop.WidthAllowance, part.Width, "wide"},
	} {
		if dim.allowance > 0 && dim.finished > 0 && !(dim.word == "long" && part.Set != "") {
			larger = append(larger, Reading(w.shop, dim.finished)+" "+dim.word)
		}
	}
	if len(larger) == 0 {
		return ""
	}
	return fmt.Sprintf("Cut with allowance: finished it is %s.", strings.Join(larger, ", "))
}
