// SPDX-License-Identifier: GPL-3.0-or-later
// The chain: every event's hash covers the event as stored and the hash before it.
//
// hash = SHA-256 over twelve fields, one after another, each written as its length in bytes (4 bytes, big
// endian, unsigned) and then its bytes:
//
//    1  previous hash    32 bytes; 32 zero bytes for the first event of an origin
//    2  origin           text: the bench's uuid, 36 characters, lower case, without braces
//    3  seq              integer
//    4  repair           text: uuid, as origin
//    5  kind             text
//    6  kind_version     integer
//    7  utc_ms           integer
//    8  boottime_ms      integer
//    9  boot_id          text
//   10  utc_offset_s     integer
//   11  person           text
//   12  payload          the stored bytes, never written anew
//
// Text is UTF-8 without a byte order mark or a final zero. An integer is 8 bytes, big endian, two's
// complement (so its length is written as 8). There is one chain an origin, in the order of seq.
//
// A chain without a key shows that it was changed in part, not that it was rewritten whole: that shows only
// beside a head that was written down elsewhere.
#pragma once

#include "clock/clock.h"

#include <QByteArray>
#include <QString>

namespace strandbench {

/// An event as its row holds it.
struct EventRecord {
    QByteArray previousHash;
    QString origin;
    qint64 seq = 0;
    QString repair;
    QString kind;
    qint64 kindVersion = 0;
    Instant at;
    QString person;
    QByteArray payload;
    QByteArray hash;
    QString localDay; ///< fixed when the event was written; follows from `at`, so the chain leaves it out
};

/// 32 zero bytes: what stands before the first event.
[[nodiscard]] QByteArray emptyChainHash();

/// The hash of a record by the layout above; its own hash is not looked at.
[[nodiscard]] QByteArray chainHash(const EventRecord& record);

} // namespace strandbench
