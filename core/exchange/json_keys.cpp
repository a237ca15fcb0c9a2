// SPDX-License-Identifier: GPL-3.0-or-later
#include "exchange/json_keys.h"

#include <QHash>
#include <QJsonArray>
#include <QJsonDocument>

#include <algorithm>
#include <iterator>
#include <vector>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

constexpr qsizetype longestPath = 200; ///< a place is found by its end
constexpr qsizetype longestShown = 80; ///< of a value: enough to recognise it by

QString named(const QString& key) { return key.isEmpty() ? u"\"\""_s : key; }

/// Walks JSON that is known to be well formed. Its depth is bounded by Qt's reader (1024). A path is made only once it
/// is told, and cut short: an input of a megabyte can hold deep paths and long values by the thousand.
class KeyScan {
public:
    KeyScan(const QByteArray& json, Faults& faults) : m_json(json), m_faults(faults) {}

    void value()
    {
        skipSpace();
        switch (here()) {
        case '{':
            object();
            break;
        case '[':
            list();
            break;
        case '"':
            text();
            break;
        default:
            while (!atEnd() && !QByteArrayView(",]} \t\r\n").contains(here()))
                ++m_at;
        }
    }

private:
    [[nodiscard]] bool atEnd() const { return m_at >= m_json.size(); }
    [[nodiscard]] char here() const { return atEnd() ? '\0' : m_json.at(m_at); }

    void skipSpace()
    {
        // Whatever is no part of the grammar here is white space or a byte order mark.
        while (!atEnd() && (static_cast<unsigned char>(here()) <= 0x20 || static_cast<unsigned char>(here()) >= 0x80))
            ++m_at;
    }

    QString text()
    {
        const qsizetype from = m_at++;
        while (!atEnd() && here() != '"')
            m_at += here() == '\\' ? 2 : 1;
        ++m_at;
        const QByteArray literal = m_json.mid(from, m_at - from);
        if (!literal.contains('\\'))
            return QString::fromUtf8(QByteArrayView(literal).sliced(1, literal.size() - 2));
        return QJsonDocument::fromJson('[' + literal + ']').array().at(0).toString();
    }

    void object()
    {
        QHash<QString, Span> seen;
        ++m_at;
        for (skipSpace(); !atEnd() && here() != '}'; skipSpace()) {
            if (here() == ',') {
                ++m_at;
                continue;
            }
            m_place.push_back({text()});
            skipSpace();
            ++m_at; // the colon
            skipSpace();
            const qsizetype from = m_at;
            value();
            take(seen, {from, m_at});
            m_place.pop_back();
        }
        ++m_at;
    }

    void list()
    {
        ++m_at;
        m_place.push_back({{}, 0});
        for (skipSpace(); !atEnd() && here() != ']'; skipSpace()) {
            if (here() == ',') {
                ++m_at;
                continue;
            }
            value();
            ++m_place.back().index;
        }
        m_place.pop_back();
        ++m_at;
    }

    /// Where a value stands in the input.
    struct Span {
        qsizetype from = 0;
        qsizetype to = 0;
    };
    /// A key, or a place in a list.
    struct Part {
        QString key;
        int index = -1;
    };

    /// The innermost key has this value; a fault when it had one already.
    void take(QHash<QString, Span>& seen, const Span& held)
    {
        const QString& key = m_place.back().key;
        if (const auto before = seen.constFind(key); before != seen.constEnd())
            m_faults.push_back({path(), shown(held), FaultKind::Conflicts, {path(), shown(*before)}});
        seen.insert(key, held);
    }

    /// From the innermost outwards, as far as it is shown.
    [[nodiscard]] QString path() const
    {
        QString all;
        for (auto each = m_place.rbegin(); each != m_place.rend() && all.size() <= longestPath; ++each) {
            const bool outermost = std::next(each) == m_place.rend();
            if (each->index >= 0)
                all.prepend(u"[%1]"_s.arg(each->index));
            else
                all.prepend((outermost ? u""_s : u"."_s) + named(each->key).right(longestPath + 1));
        }
        return all.size() > longestPath ? u'…' + all.right(longestPath) : all;
    }

    [[nodiscard]] QString shown(const Span& held) const
    {
        // A character has at most four bytes.
        const auto bytes = QByteArrayView(m_json)
                               .sliced(held.from, held.to - held.from)
                               .first(std::min(held.to - held.from, 4 * (longestShown + 1)));
        const QString text = QString::fromUtf8(bytes);
        return text.size() > longestShown ? text.left(longestShown) + u'…' : text;
    }

    const QByteArray& m_json;
    Faults& m_faults;
    qsizetype m_at = 0;
    std::vector<Part> m_place;
};

} // namespace

QString pathWith(const QString& path, const QString& key)
{
    return path.isEmpty() ? named(key) : path + u'.' + named(key);
}

Faults repeatedKeys(const QByteArray& json)
{
    Faults faults;
    KeyScan(json, faults).value();
    return faults;
}

} // namespace strandbench
