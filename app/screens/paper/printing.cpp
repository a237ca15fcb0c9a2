// SPDX-License-Identifier: GPL-3.0-or-later
#include "screens/paper/printing.h"

#include <QPrintDialog>
#include <QPrinter>
#include <QPrinterInfo>

namespace strandbench {
namespace {

void askBySystem(const std::shared_ptr<QPrinter>& printer, QWidget* over, const std::function<void(bool)>& answered)
{
    auto* dialog = new QPrintDialog(printer.get(), over);
    dialog->setAttribute(Qt::WA_DeleteOnClose);
    for (const auto option : {QAbstractPrintDialog::PrintPageRange, QAbstractPrintDialog::PrintSelection,
                              QAbstractPrintDialog::PrintCurrentPage})
        dialog->setOption(option, false); // a sheet is printed whole
    QObject::connect(dialog, &QDialog::finished, over,
                     [printer, answered](int result) { answered(result == QDialog::Accepted); });
    dialog->open();
}

} // namespace

Printing Printing::bySystem() { return {&QPrinterInfo::availablePrinterNames, &askBySystem}; }

} // namespace strandbench
