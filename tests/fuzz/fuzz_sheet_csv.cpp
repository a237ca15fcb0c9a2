// SPDX-License-Identifier: GPL-3.0-or-later
// A product sheet as CSV: what is accepted is a sheet by its JSON, and comes back from our CSV with the same bytes.
#include "exchange/sheet_csv.h"
#include "exchange/sheets.h"
#include "fuzz.h"

int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size)
{
    using namespace strandbench;
    const Checked<ProductSheet> sheet = readSheetCsv(fuzz::bytesOf(data, size));
    if (!sheet) {
        fuzz::requireTold(sheet.error());
        return 0;
    }
    const Checked<ProductSheet> fromJson = readSheet(sheet->source);
    fuzz::require(fromJson.has_value() && fromJson->hash == sheet->hash, "its JSON is the sheet");
    const Checked<ProductSheet> again = readSheetCsv(sheetToCsv(*sheet));
    fuzz::require(again.has_value() && again->source == sheet->source, "it survives our CSV");
    return 0;
}
