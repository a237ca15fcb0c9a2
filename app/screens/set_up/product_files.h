// SPDX-License-Identifier: GPL-3.0-or-later
// Product sheets as files: those of a folder, and what keeps one from being read.
#pragma once

#include "quantity/fault.h"
#include "screens/frame/screen.h"

namespace strandbench {

/// The JSON and CSV files of a folder, the newest first; a key leads to another folder.
class ProductPickScreen final : public Screen {
    Q_OBJECT
public:
    ProductPickScreen(const Surroundings& around, const QString& folder, QWidget* parent = nullptr);

Q_SIGNALS:
    void chosen(const QString& path);
    void folderWanted();
};

/// A file as a sheet, by its ending: ".csv", else JSON. Faults: of the file, or of its fields.
[[nodiscard]] Checked<ProductSheet> readSheetFile(const QString& path);

/// Everything that is wrong with a file, page by page.
[[nodiscard]] Screen* makeProductFaults(const Surroundings& around, const QString& path, const Faults& faults,
                                        const std::function<void()>& done, QWidget* parent);

} // namespace strandbench
