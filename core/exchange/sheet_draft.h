// SPDX-License-Identifier: GPL-3.0-or-later
// A product sheet while it is typed: what is there of it field by field, what of that is only assumed, and what is
// still wrong. It becomes a sheet by the same strict reading as one from a file.
#pragma once

#include "exchange/sheet_fields.h"
#include "quantity/fault.h"

#include <QJsonObject>
#include <QSet>

#include <map>

namespace strandbench {

class SheetDraft {
public:
    /// Nothing but the class, and what paper sheets rarely state, marked as assumed.
    [[nodiscard]] static SheetDraft ofClass(FillerClass filler);
    /// All that a sheet holds; nothing of it is assumed.
    [[nodiscard]] static SheetDraft of(const ProductSheet& sheet);

    /// The value of a field: a number, a text or a flag; undefined where there is none yet.
    [[nodiscard]] QJsonValue value(const QString& path) const;
    [[nodiscard]] bool holds(const QString& path) const { return m_values.contains(path); }
    [[nodiscard]] bool isAssumed(const QString& path) const { return m_assumed.contains(path); }
    [[nodiscard]] FillerClass filler() const;
    /// Sets a field of the table, which is no longer assumed then. An undefined value takes it away. Another class
    /// takes along the fields that it does not have.
    void set(const QString& path, const QJsonValue& value);
    /// Names the sheet; a new one's id follows from it, none of `taken`.
    void name(const QString& name, const QSet<QString>& taken);
    /// The same for what is outside the table: the sheet's own cells, and whatever else a sheet may hold.
    [[nodiscard]] const QJsonObject& rest() const { return m_rest; }
    void setRest(const QJsonObject& rest) { m_rest = rest; }

    /// The file of it as it stands: the table's order, one line a member.
    [[nodiscard]] QByteArray toJson() const;
    /// The sheet, or everything that is wrong, each by its field.
    [[nodiscard]] Checked<ProductSheet> sheet() const;
    bool operator==(const SheetDraft&) const = default;

private:
    std::map<QString, QJsonValue> m_values;
    QSet<QString> m_assumed;
    QJsonObject m_rest;
};

/// An id for a name: its letters and digits, small and plain, with underscores between, at most 40 characters; with a
/// number behind where it is taken.
[[nodiscard]] QString sheetIdFor(const QString& name, const QSet<QString>& taken);

} // namespace strandbench
