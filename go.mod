module sawbill

go 1.26
