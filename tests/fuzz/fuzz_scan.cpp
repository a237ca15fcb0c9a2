// SPDX-License-Identifier: GPL-3.0-or-later
// What a scanner types, and a person and a foot switch between it: four bytes a press (how, the pause before it in ms,
// the character). The reader keeps every character it holds back, in order, and what is taken of a scan can be shown.
#include "fuzz.h"
#include "screens/frame/scan_text.h"
#include "shell/scan_reader.h"

namespace strandbench::fuzz {
namespace {

void checkText(const QString& text)
{
    const QString trimmed = text.trimmed();
    if (!scanTrouble(trimmed))
        require(!trimmed.isEmpty() && trimmed.size() <= longestScan && isShowable(trimmed), "a name can be shown");
    require(isShowable(shownScan(text)) && shownScan(text).size() <= longestScan + 1, "a scan is told on one line");
    const Checked<QString> lot = inhand::readLot(text);
    if (!lot)
        return requireTold(lot.error());
    require(!lot->isEmpty() && lot->size() <= inhand::longestLot && isShowable(*lot), "a lot can be shown");
    require(inhand::readLot(*lot) == lot, "read again it is the same");
}

/// The reader beside what it must be holding.
class Bench {
public:
    void press(const QKeyEvent& press, int afterMs)
    {
        m_now.boottimeMs += afterMs;
        m_now.utcMs += afterMs;
        if (m_reader.rested(m_now))
            letGo();
        const auto take = m_reader.take(press, m_now);
        if (take == ScanReader::Take::Held) {
            m_held += press.text();
            ++m_presses;
        } else if (take == ScanReader::Take::Scan) {
            require(m_presses >= 2 && !m_held.isEmpty(), "a scan has two characters");
            checkText(m_reader.text());
        }
        require(m_reader.text() == m_held && m_reader.holding() == (m_presses > 0), "it holds what it held back");
        if (take != ScanReader::Take::Held)
            letGo();
    }

    void letGo()
    {
        require(!m_held.isEmpty() || !m_reader.holding(), "what is held has a text");
        require(m_held.isEmpty() || (m_held[0].isPrint() && !m_held[0].isSpace()), "a scan begins with a character");
        require(!m_reader.cutShort() || m_presses >= 5, "nobody's typing is cut short");
        require(m_reader.release().size() == m_presses && !m_reader.holding(), "it lets go of all");
        m_held.clear();
        m_presses = 0;
    }

private:
    ScanReader m_reader;
    Instant m_now{1'000'000, 1'000'000, QStringLiteral("boot"), 0};
    QString m_held;
    std::size_t m_presses = 0;
};

} // namespace
} // namespace strandbench::fuzz

int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size)
{
    using namespace strandbench;
    fuzz::Bench bench;
    for (std::size_t i = 0; i + 4 <= size; i += 4) {
        const QChar typed(char16_t(data[i + 2] | data[i + 3] << 8));
        const int key = typed == u'\r' ? int(Qt::Key_Return) : int(typed.toUpper().unicode());
        const auto modifiers = data[i] & 2   ? Qt::ControlModifier
                               : data[i] & 4 ? Qt::ShiftModifier
                                             : Qt::KeyboardModifiers();
        const QString text = data[i] & 8 ? QString() : QString(typed);
        bench.press(QKeyEvent(QEvent::KeyPress, key, modifiers, text, (data[i] & 1) != 0), data[i + 1]);
    }
    bench.letGo();
    fuzz::checkText(QString::fromUtf8(fuzz::bytesOf(data, size)));
    return 0;
}
