package files

// planFormat is the only format of plan files that ReadPlan knows.
const planFormat = "sawbill-plan/1"

// plan1 and the structs below are the plan file, version 1. A key is required
// unless it is tagged omitempty, omitzero or absent; it may be null if it is a pointer or
// not required.
type plan1 struct {
	Format   string      `json:"format"`
	Job      string      `json:"job"`
	Revision count       `json:"revision"`
	Made     string      `json:"made"`
	Yard     bool        `json:"yard,omitempty"`
	Shop     shop1       `json:"shop"`
	Stock    []board1    `json:"stock"`
	Bill     []part1     `json:"bill"`
	Boards   []boardCut1 `json:"boards"`
	Missing  []missing1  `json:"missing"`
	Totals   totals1     `json:"totals"`
	Paper    string      `json:"paper,omitempty"`
	Order    string      `json:"order,omitempty"`
	Record   *record1    `json:"record,omitempty"`
}

type shop1 struct {
	Units              string             `json:"units"`
	Fraction           count              `json:"fraction"`
	RipKerf            nm                 `json:"rip_kerf"`
	CrosscutKerf       nm                 `json:"crosscut_kerf"`
	RoughRipKerf       nm                 `json:"rough_rip_kerf"`
	ResawKerf          nm                 `json:"resaw_kerf"`
	EndTrim            nm                 `json:"end_trim"`
	EdgeJoint          nm                 `json:"edge_joint"`
	EndSquare          nm                 `json:"end_square"`
	FaceSkim           nm                 `json:"face_skim"`
	Snipe              nm                 `json:"snipe"`
	PanelSquare        nm                 `json:"panel_square"`
	LengthAllowance    nm                 `json:"length_allowance"`
	WidthAllowance     nm                 `json:"width_allowance"`
	ThicknessAllowance nm                 `json:"thickness_allowance"`
	MinBlank           nm                 `json:"min_blank"`
	MaxBlank           *nm                `json:"max_blank" absent:"none"`
	JointerWidth       *nm                `json:"jointer_width" absent:"none"`
	PlanerWidth        *nm                `json:"planer_width" absent:"none"`
	MinRipLength       nm                 `json:"min_rip_length"`
	MinRip             nm                 `json:"min_rip"`
	MinCrosscut        nm                 `json:"min_crosscut"`
	MinOffcutLength    nm                 `json:"min_offcut_length"`
	MinOffcutWidth     nm                 `json:"min_offcut_width"`
	OffcutCredit       credit             `json:"offcut_credit"`
	RipAgain           bool               `json:"rip_again"`
	Price              map[string]money   `json:"price"`
	PriceUnit          string             `json:"price_unit"`
	Clearance          map[string][2]nm   `json:"clearance"`
	Grades             map[string]grade1  `json:"grades"`
	Kinds              map[string]string  `json:"kinds"`
	Hidden             map[string]hidden1 `json:"hidden,omitempty"`
	Quote              *quote1            `json:"quote,omitempty"`
}

// quote1 leaves out what is 0.
type quote1 struct {
	Hours    hours  `json:"hours,omitempty"`
	Rate     money  `json:"rate,omitempty"`
	Finish   money  `json:"finish,omitempty"`
	Hardware money  `json:"hardware,omitempty"`
	Margin   margin `json:"margin,omitempty"`
}

// hidden1 leaves out a side that the shop does not say.
type hidden1 struct {
	Per10BF rate `json:"per_10bf"`
	Length  nm   `json:"length,omitempty"`
	Width   nm   `json:"width,omitempty"`
}

type grade1 struct {
	Show []string `json:"show"`
	Back []string `json:"back"`
}

// board1 is a row of the stock, expanded by count. Base is the mark of the row
// that several boards came from.
type board1 struct {
	Board     string    `json:"board"`
	Base      string    `json:"base,omitempty"`
	Species   string    `json:"species"`
	Thickness nm        `json:"thickness"`
	Width     nm        `json:"width"`
	TipWidth  nm        `json:"tip_width,omitempty"`
	Length    nm        `json:"length"`
	Cost      money     `json:"cost" absent:"0"`
	Edges     string    `json:"edges,omitempty"`
	Faces     string    `json:"faces,omitempty"`
	Bow       nm        `json:"bow,omitempty"`
	Crook     nm        `json:"crook,omitempty"`
	Cup       nm        `json:"cup,omitempty"`
	Twist     nm        `json:"twist,omitempty"`
	Source    string    `json:"source,omitempty"`
	Place     string    `json:"place,omitempty"`
	Grade     string    `json:"grade,omitempty"`
	Note      string    `json:"note,omitempty"`
	Defects   []defect1 `json:"defects,omitempty"`
}

type defect1 struct {
	Kind string `json:"kind"`
	Face string `json:"face" absent:"through"`
	rect1
}

type rect1 struct {
	X1 nm `json:"x1"`
	X2 nm `json:"x2"`
	Y1 nm `json:"y1"`
	Y2 nm `json:"y2"`
}

type part1 struct {
	Part           string   `json:"part"`
	Species        []string `json:"species"`
	Thickness      nm       `json:"thickness"`
	Width          nm       `json:"width"`
	Length         nm       `json:"length,omitempty"`
	Quantity       count    `json:"quantity"`
	Spare          count    `json:"spare,omitempty"`
	Grade          string   `json:"grade,omitempty"`
	Bevel          degrees  `json:"bevel,omitempty"`
	OnEdge         bool     `json:"on_edge,omitempty"`
	Resaw          bool     `json:"resaw,omitempty"`
	Match          string   `json:"match,omitempty"`
	Priority       count    `json:"priority,omitempty"`
	From           []string `json:"from,omitempty"`
	NotFrom        []string `json:"not_from,omitempty"`
	Set            string   `json:"set,omitempty"`
	Slices         count    `json:"slices,omitempty"`
	SliceThickness nm       `json:"slice_thickness,omitempty"`
	Piece          string   `json:"piece,omitempty"`
	Note           string   `json:"note,omitempty"`
}

type boardCut1 struct {
	Board   string   `json:"board"`
	Cost    money    `json:"cost"`
	Account account1 `json:"account"`
	Root    node1    `json:"root"`
}

type account1 struct {
	Parts   float64 `json:"parts"`
	Planing float64 `json:"planing"`
	Kerf    float64 `json:"kerf"`
	Edges   float64 `json:"edges"`
	Offcuts float64 `json:"offcuts"`
	Defects float64 `json:"defects"`
	Scrap   float64 `json:"scrap"`
}

type node1 struct {
	rect1
	Cut       string  `json:"cut,omitempty"`
	Trued     bool    `json:"trued,omitempty"`
	Thickness nm      `json:"thickness,omitempty"`
	Children  []node1 `json:"children,omitempty"`
	Lean      nm      `json:"lean,omitempty"`
	Part      string  `json:"part,omitempty"`
	ID        string  `json:"id,omitempty"`
	Show      string  `json:"show,omitempty"`
	OnEdge    bool    `json:"on_edge,omitempty"`
	Layers    count   `json:"layers,omitempty"`
	Slices    count   `json:"slices,omitempty"`
	Spare     bool    `json:"spare,omitempty"`
	Offcut    string  `json:"offcut,omitempty"`
}

type missing1 struct {
	Part     string `json:"part"`
	Quantity count  `json:"quantity"`
	Why      string `json:"why,omitempty"`
}

// totals1 carries the gap for readers that do not work it out; it follows from
// cost and bound.
type totals1 struct {
	Cost       money             `json:"cost"`
	Bound      *money            `json:"bound" absent:"none"`
	Gap        *float64          `json:"gap" absent:"none"`
	Prices     map[string]price1 `json:"prices,omitzero"` // with none at all something may be proven, too
	PriceBound *money            `json:"price_bound,omitempty"`
	Yield      *float64          `json:"yield" absent:"none"`
}
