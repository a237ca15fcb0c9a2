// SPDX-License-Identifier: GPL-3.0-or-later
#include "repairlog/chain.h"

#include <QCryptographicHash>
#include <QtEndian>

namespace strandbench {
namespace {

template <class T> QByteArray bigEndian(T value)
{
    QByteArray bytes(sizeof(T), Qt::Uninitialized);
    qToBigEndian(value, bytes.data());
    return bytes;
}

class Layout {
public:
    void bytes(const QByteArray& field)
    {
        m_hash.addData(bigEndian(quint32(field.size())));
        m_hash.addData(field);
    }
    void text(const QString& field) { bytes(field.toUtf8()); }
    void integer(qint64 field) { bytes(bigEndian(field)); }
    [[nodiscard]] QByteArray result() const { return m_hash.result(); }

private:
    QCryptographicHash m_hash{QCryptographicHash::Sha256};
};

} // namespace

QByteArray emptyChainHash() { return QByteArray(32, '\0'); }

QByteArray chainHash(const EventRecord& record)
{
    Layout layout;
    layout.bytes(record.previousHash);
    layout.text(record.origin);
    layout.integer(record.seq);
    layout.text(record.repair);
    layout.text(record.kind);
    layout.integer(record.kindVersion);
    layout.integer(record.at.utcMs);
    layout.integer(record.at.boottimeMs);
    layout.text(record.at.bootId);
    layout.integer(record.at.utcOffsetSeconds);
    layout.text(record.person);
    layout.bytes(record.payload);
    return layout.result();
}

} // namespace strandbench
