// SPDX-License-Identifier: GPL-3.0-or-later
#include "instrument/line_reader.h"

#include <algorithm>

namespace strandbench {
namespace {

bool isEnd(char byte) { return byte == '\r' || byte == '\n'; }

/// What can be printed, and the tabulator; a sign of degrees too, whose bytes are above those of ASCII.
bool isPlain(char byte)
{
    const auto code = static_cast<unsigned char>(byte);
    return (code >= 0x20 && code <= 0x7e) || code >= 0xa0 || byte == '\t';
}

} // namespace

std::vector<QByteArray> LineReader::take(const QByteArray& bytes, Duration now)
{
    std::vector<QByteArray> lines;
    if (bytes.isEmpty())
        return lines;
    if (!m_line.isEmpty() && now - m_last > longestPause())
        restart();
    m_last = now;
    for (const char byte : bytes) {
        if (isEnd(byte))
            end(lines);
        else if (!m_whole || !isPlain(byte) || m_line.size() == longest)
            restart();
        else
            m_line += byte;
    }
    return lines;
}

void LineReader::end(std::vector<QByteArray>& lines)
{
    if (!m_whole)
        ++m_dropped;
    else if (std::any_of(m_line.cbegin(), m_line.cend(), [](char byte) { return byte != ' ' && byte != '\t'; }))
        lines.push_back(m_line);
    m_line.clear();
    m_whole = true;
}

void LineReader::restart()
{
    m_line.clear();
    m_whole = false;
}

} // namespace strandbench
