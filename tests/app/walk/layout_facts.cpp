// SPDX-License-Identifier: GPL-3.0-or-later
#include "layout_facts.h"

#include "touch/shown_text.h"

#include <QAbstractButton>
#include <QAccessible>
#include <QJsonArray>
#include <QJsonDocument>
#include <QMetaEnum>

#include <algorithm>
#include <cmath>

using namespace Qt::StringLiterals;

namespace strandbench::test {
namespace {

constexpr int halves = 2; ///< of a millimetre: what is kept of a place
constexpr int leeway = 1; ///< of these: a pixel more or less may round the other way

QRect placeOf(const QWidget& widget, const QWidget& window)
{
    return {widget.mapTo(&window, QPoint(0, 0)), widget.size()};
}

QString roleOf(const QWidget& widget)
{
    QAccessibleInterface* spoken = QAccessible::queryAccessibleInterface(const_cast<QWidget*>(&widget));
    const char* role = spoken ? QMetaEnum::fromType<QAccessible::Role>().valueToKey(spoken->role()) : nullptr;
    return QString::fromLatin1(role ? role : "NoRole");
}

/// "12.5 mm"
QString mm(int half) { return QString::number(half / double(halves), 'f', 1) + u" mm"_s; }

/// "3.0 mm from the left, 12.5 mm from the top, 20.0 by 24.0 mm"
QString told(const QRect& place)
{
    return u"%1 from the left, %2 from the top, %3 by %4"_s.arg(mm(place.x()), mm(place.y()),
                                                                mm(place.width()).chopped(3), mm(place.height()));
}

bool alike(const QRect& one, const QRect& other)
{
    const auto near = [](int a, int b) { return std::abs(a - b) <= leeway; };
    return near(one.x(), other.x()) && near(one.y(), other.y()) && near(one.width(), other.width()) &&
           near(one.height(), other.height());
}

bool alike(const Keys& one, const Keys& other)
{
    return one.keys() == other.keys() && std::equal(one.cbegin(), one.cend(), other.cbegin(),
                                                    [](const QRect& a, const QRect& b) { return alike(a, b); });
}

void addChanges(const QString& screen, const Keys& accepted, const Keys& now, QStringList& out)
{
    for (auto key = accepted.cbegin(); key != accepted.cend(); ++key) {
        const auto found = now.constFind(key.key());
        if (found == now.cend())
            out << u"%1: the key '%2' is gone; it stood %3"_s.arg(screen, key.key(), told(*key));
        else if (!alike(*key, *found))
            out << u"%1: the key '%2' stood %3, and stands %4"_s.arg(screen, key.key(), told(*key), told(*found));
    }
    for (auto key = now.cbegin(); key != now.cend(); ++key)
        if (!accepted.contains(key.key()))
            out << u"%1: the key '%2' is new, %3"_s.arg(screen, key.key(), told(*key));
}

} // namespace

QJsonObject factsOf(const QWidget& window, const Theme& theme)
{
    const auto tenths = [&theme](int pixels) { return std::round(theme.metrics().mm(pixels) * 10) / 10; };
    QJsonObject facts;
    for (const QWidget* widget : window.findChildren<QWidget*>()) {
        if (widget->objectName().isEmpty() || !widget->isVisibleTo(&window) || widget->isWindow())
            continue;
        const QRect place = placeOf(*widget, window);
        QJsonArray read;
        if (const auto* shows = dynamic_cast<const ShowsText*>(widget)) {
            const std::vector<ShownText> texts = shows->shownTexts();
            for (const ShownText& each : texts)
                read << each.text;
        }
        facts.insert(widget->objectName(),
                     QJsonObject{{u"role"_s, roleOf(*widget)},
                                 {u"name"_s, widget->accessibleName()},
                                 {u"text"_s, read},
                                 {u"mm"_s, QJsonArray{tenths(place.x()), tenths(place.y()), tenths(place.width()),
                                                      tenths(place.height())}}});
    }
    return facts;
}

Keys keysOf(const QWidget& window, const Theme& theme)
{
    const auto half = [&theme](int pixels) { return qRound(theme.metrics().mm(pixels) * halves); };
    Keys keys;
    for (const QAbstractButton* key : window.findChildren<QAbstractButton*>()) {
        if (!key->isVisibleTo(&window))
            continue;
        const QRect place = placeOf(*key, window);
        keys.insert(key->objectName(), {half(place.x()), half(place.y()), half(place.width()), half(place.height())});
    }
    return keys;
}

void Layouts::note(const QString& screen, const Keys& keys)
{
    QList<Keys>& known = m_of[screen];
    if (std::none_of(known.cbegin(), known.cend(), [&keys](const Keys& each) { return alike(each, keys); }))
        known << keys;
}

QByteArray Layouts::toJson() const
{
    QByteArray lines;
    for (auto screen = m_of.cbegin(); screen != m_of.cend(); ++screen) {
        QByteArrayList layouts;
        for (const Keys& keys : *screen) {
            QJsonObject one;
            for (auto key = keys.cbegin(); key != keys.cend(); ++key)
                one.insert(key.key(), QJsonArray{key->x(), key->y(), key->width(), key->height()});
            layouts << QJsonDocument(one).toJson(QJsonDocument::Compact);
        }
        lines += (lines.isEmpty() ? "{\"" : ",\n\"") + screen.key().toUtf8() + "\":[\n" + layouts.join(",\n") + ']';
    }
    return lines + "}\n";
}

std::optional<Layouts> Layouts::fromJson(const QByteArray& json)
{
    const QJsonDocument document = QJsonDocument::fromJson(json);
    if (!document.isObject())
        return std::nullopt;
    Layouts read;
    const QJsonObject screens = document.object();
    for (auto screen = screens.begin(); screen != screens.end(); ++screen) {
        const QJsonArray layouts = screen->toArray();
        for (const auto& layout : layouts) {
            Keys keys;
            const QJsonObject one = layout.toObject();
            for (auto key = one.begin(); key != one.end(); ++key) {
                const QJsonArray place = key->toArray();
                keys.insert(key.key(), {place[0].toInt(), place[1].toInt(), place[2].toInt(), place[3].toInt()});
            }
            read.m_of[screen.key()] << keys;
        }
    }
    return read;
}

QStringList Layouts::changes(const Layouts& accepted, const Layouts& now)
{
    QStringList out;
    for (auto screen = accepted.m_of.cbegin(); screen != accepted.m_of.cend(); ++screen) {
        const QList<Keys> shown = now.m_of.value(screen.key());
        if (shown.isEmpty())
            out << u"%1: is not shown any more"_s.arg(screen.key());
        for (qsizetype i = 0; i < std::min(screen->size(), shown.size()); ++i)
            addChanges(screen.key(), screen->at(i), shown.at(i), out);
        if (!shown.isEmpty() && shown.size() != screen->size())
            out << u"%1: had %2 layouts, and has %3"_s.arg(screen.key()).arg(screen->size()).arg(shown.size());
    }
    for (auto screen = now.m_of.cbegin(); screen != now.m_of.cend(); ++screen)
        if (!accepted.m_of.contains(screen.key()))
            out << u"%1: is new"_s.arg(screen.key());
    return out;
}

} // namespace strandbench::test
