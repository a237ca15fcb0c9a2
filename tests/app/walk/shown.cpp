// SPDX-License-Identifier: GPL-3.0-or-later
#include "shown.h"

#include "touch/fit_label.h"
#include "touch/tap_button.h"

#include <QRegularExpression>

using namespace Qt::StringLiterals;

namespace strandbench::test {

QString shown(BenchWindow& window, const QString& name)
{
    for (const FitLabel* each : window.findChildren<FitLabel*>(name))
        if (each->isVisible())
            return each->text();
    for (const TapButton* each : window.findChildren<TapButton*>(name))
        if (each->isVisible())
            return each->title();
    return {};
}

QStringList allShown(BenchWindow& window)
{
    QStringList texts;
    for (QWidget* each : window.screen()->findChildren<QWidget*>())
        if (const auto* shows = dynamic_cast<const ShowsText*>(each); shows && each->isVisible())
            for (const ShownText& text : shows->shownTexts())
                texts << text.text;
    return texts;
}

QStringList figuresOf(const QString& text)
{
    static const QRegularExpression figure(u"\\d+(?:[.,:/]\\d+)?"_s);
    QStringList figures;
    for (auto each = figure.globalMatch(text); each.hasNext();)
        figures << each.next().captured();
    return figures;
}

} // namespace strandbench::test
