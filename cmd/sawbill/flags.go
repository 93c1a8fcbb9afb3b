package main

import "github.com/urfave/cli/v2"

func stockFlag() cli.Flag {
	return &cli.PathFlag{TakesFile: true, Name: "stock", Usage: "the boards, a CSV `FILE`"}
}

func shopFlag() cli.Flag {
	return &cli.PathFlag{TakesFile: true, Name: "shop", Usage: "the saws and machines, a TOML `FILE`; without it an inch shop with the usual figures"}
}

func billFlag() cli.Flag {
	return &cli.PathFlag{TakesFile: true, Name: "bill", Usage: "the parts, a CSV `FILE`"}
}

func problemFlags() []cli.Flag {
	return []cli.Flag{
		stockFlag(),
		billFlag(),
		shopFlag(),
		&cli.BoolFlag{Name: "yard", Usage: "boards of the yard may be bought"},
	}
}
