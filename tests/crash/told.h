// SPDX-License-Identifier: GPL-3.0-or-later
// What a worker tells the one that will kill it: a line a fact, each in one write, so that none is cut in half.
//
//   phase opening | working | closing
//   done MARK SEQ        the act with this mark was confirmed; SEQ is 0 where the bench does not say it
//   at MARK SEQ HASH     its place in the chain, read back from the log
//   backup NAME          a backup begins; backed NAME: it is there; unbacked NAME WHY: it was refused
//   trouble WHAT         something that must not happen
#pragma once

#include <QString>

#include <unistd.h>

namespace strandbench::test {

inline void tell(const QString& line)
{
    const QByteArray bytes = line.toUtf8() + '\n';
    if (::write(STDOUT_FILENO, bytes.constData(), std::size_t(bytes.size())) != bytes.size())
        ::_exit(3); // nobody listens any more
}

} // namespace strandbench::test
