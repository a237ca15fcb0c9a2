// SPDX-License-Identifier: GPL-3.0-or-later
#include "exchange/json_keys.h"

#include <QHash>
#include <QJsonArray>
#include <QJsonDocument>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

/// Walks JSON that is known to be well formed. Its depth is bounded by Qt's reader (1024).
class KeyScan {
public:
    KeyScan(const QByteArray& json, Faults& faults) : m_json(json), m_faults(faults) {}

    void value(const QString& path)
    {
        skipSpace();
        switch (here()) {
        case '{':
            object(path);
            break;
        case '[':
            list(path);
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
        return QJsonDocument::fromJson('[' + literal + ']').array().at(0).toString();
    }

    void object(const QString& path)
    {
        QHash<QString, QByteArray> seen;
        ++m_at;
        for (skipSpace(); !atEnd() && here() != '}'; skipSpace()) {
            if (here() == ',') {
                ++m_at;
                continue;
            }
            const QString key = text();
            const QString keyPath = path.isEmpty() ? key : path + u'.' + key;
            skipSpace();
            ++m_at; // the colon
            skipSpace();
            const qsizetype from = m_at;
            value(keyPath);
            const QByteArray held = m_json.mid(from, m_at - from);
            if (seen.contains(key))
                m_faults.push_back({keyPath,
                                    QString::fromUtf8(held),
                                    FaultKind::Conflicts,
                                    {keyPath, QString::fromUtf8(seen.value(key))}});
            seen.insert(key, held);
        }
        ++m_at;
    }

    void list(const QString& path)
    {
        ++m_at;
        int index = 0;
        for (skipSpace(); !atEnd() && here() != ']'; skipSpace()) {
            if (here() == ',')
                ++m_at;
            else
                value(u"%1[%2]"_s.arg(path).arg(index++));
        }
        ++m_at;
    }

    const QByteArray& m_json;
    Faults& m_faults;
    qsizetype m_at = 0;
};

} // namespace

Faults repeatedKeys(const QByteArray& json)
{
    Faults faults;
    KeyScan(json, faults).value({});
    return faults;
}

} // namespace strandbench
