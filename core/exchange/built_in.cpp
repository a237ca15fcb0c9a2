// SPDX-License-Identifier: GPL-3.0-or-later
#include "exchange/built_in.h"

#include "exchange/rules.h"
#include "exchange/sheets.h"

#include <QFile>

using namespace Qt::StringLiterals;

namespace strandbench {

QByteArray builtInBytes(const QString& path)
{
    QFile file(u":/strandbench/"_s + path);
    if (!file.open(QIODevice::ReadOnly))
        throw std::logic_error("built-in file missing: " + path.toStdString());
    return file.readAll();
}

void throwBuiltInDefect(const QString& path, const Faults& faults)
{
    const Fault& first = faults.front();
    throw std::logic_error("built-in file " + path.toStdString() + ": " + first.field.toStdString() + " = \"" +
                           first.value.toStdString() + "\"; allowed: " + first.allowed.join(u", "_s).toStdString());
}

const Catalogue& demoCatalogue()
{
    static const Catalogue catalogue = [] {
        std::vector<ProductSheet> sheets;
        for (const QString& code : allCodes<FillerClass>())
            sheets.push_back(builtIn(u"sheets/demo_%1.json"_s.arg(code), readSheet));
        return Catalogue(std::move(sheets));
    }();
    return catalogue;
}

const DecisionTable& builtInTable()
{
    static const DecisionTable table = builtIn(u"decision/table.json"_s, readDecisionTable);
    return table;
}

const StepBook& builtInSteps()
{
    static const StepBook steps = builtIn(u"steps/steps.json"_s, readStepBook);
    return steps;
}

} // namespace strandbench
