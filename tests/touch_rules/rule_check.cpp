// SPDX-License-Identifier: GPL-3.0-or-later
#include "touch_rules/rule_check.h"

#include "touch_rules/rule_parts.h"

#include <QAbstractScrollArea>

#include <ostream>

namespace strandbench::rules {

using namespace Qt::StringLiterals;

namespace {

bool scrolledAway(const Screen& screen, const QWidget* widget)
{
    for (const QWidget* up = widget->parentWidget(); up && up != screen.root; up = up->parentWidget()) {
        if (qobject_cast<const QAbstractScrollArea*>(up))
            return screen.seenOf(widget).isEmpty();
    }
    return false;
}

} // namespace

QRect Screen::rectOf(const QWidget* widget) const { return {widget->mapTo(root, QPoint(0, 0)), widget->size()}; }

QRect Screen::seenOf(const QWidget* widget) const
{
    QRect seen = rectOf(widget);
    for (const QWidget* up = widget->parentWidget(); up; up = up == root ? nullptr : up->parentWidget())
        seen &= up == root ? root->rect() : rectOf(up);
    return seen;
}

QString Screen::mm(double pixels) const { return QString::number(theme.metrics().mm(pixels), 'f', 2) + u" mm"_s; }

QString nameOf(const QWidget* widget)
{
    return widget->objectName().isEmpty() ? QString::fromLatin1(widget->metaObject()->className())
                                          : widget->objectName();
}

QString ratio(double contrast) { return QString::number(contrast, 'f', 2) + u" : 1"_s; }

RuleSet ruleSetOf(const QString& screen)
{
    for (const QString& dense : {u"screen_set_up"_s, u"screen_calibrate"_s, u"screen_review"_s, u"screen_record"_s,
                                 u"screen_closing"_s, u"screen_timeline"_s})
        if (screen.startsWith(dense))
            return RuleSet::Dense;
    return RuleSet::Bench;
}

std::vector<Breach> checkScreen(QWidget* root, const Theme& theme, RuleSet set)
{
    Screen screen{root, theme, set, {}, {}};
    const QList<QWidget*> all = root->findChildren<QWidget*>();
    for (QWidget* widget : all) {
        if (!widget->isVisibleTo(root) || widget->isWindow() || scrolledAway(screen, widget))
            continue;
        screen.widgets.push_back(widget);
        if (auto* target = qobject_cast<QAbstractButton*>(widget))
            screen.targets.push_back(target);
    }
    std::vector<Breach> out;
    checkTargets(screen, out);
    checkTexts(screen, out);
    checkContrast(screen, out);
    checkNames(screen, out);
    checkPictures(screen, out);
    checkKeyboard(screen, out);
    return out;
}

std::ostream& operator<<(std::ostream& out, const Breach& breach)
{
    return out << breach.rule.toStdString() << ": " << breach.widget.toStdString() << " has "
               << breach.found.toStdString() << ", allowed " << breach.allowed.toStdString();
}

void PrintTo(const Breach& breach, std::ostream* out) { *out << breach; }

} // namespace strandbench::rules
