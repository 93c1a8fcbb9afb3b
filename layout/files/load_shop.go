package files

import "sawbill/layout"

// LoadShop reads a shop file by itself and checks it, as Load does. The error lists all
// that is wrong with it.
func LoadShop(source Source) (*layout.Shop, error) {
	shop, found := loadShop(source)
	if shop == nil {
		return nil, found
	}
	if err := merge(found, layout.CheckShop(shop.Shop), shop, &Stock{}, &Bill{}).Err(); err != nil {
		return nil, err
	}
	return shop.Shop, nil
}
