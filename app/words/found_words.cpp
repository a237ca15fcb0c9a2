// SPDX-License-Identifier: GPL-3.0-or-later
#include "words/found_words.h"

#include "words/table.h"

#include <QtGlobal>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

constexpr words::Line names[] = {
    //: what told one substrate from another, in a list: "magnet, tap sound"
    {"magnet", QT_TRANSLATE_NOOP("FoundBy", "magnet")},
    {"zinc_gauge", QT_TRANSLATE_NOOP("FoundBy", "zinc gauge")},
    {"ohmmeter", QT_TRANSLATE_NOOP("FoundBy", "ohmmeter")},
    {"broken_edge", QT_TRANSLATE_NOOP("FoundBy", "broken edge")},
    {"back_marking", QT_TRANSLATE_NOOP("FoundBy", "marking on the back")},
    {"tap_sound", QT_TRANSLATE_NOOP("FoundBy", "tap sound")},
};

} // namespace

QString foundByName(FoundBy by) { return words::lookUp("FoundBy", names, codeOf(by)); }

QString withFoundBy(const QString& answer, const std::vector<FoundBy>& foundBy)
{
    if (foundBy.empty())
        return answer;
    QStringList all;
    for (const FoundBy each : foundBy)
        all << foundByName(each);
    //: %1 is what a panel is made of, %2 a list: "SMC (told by broken edge, tap sound)"
    const QString text = words::inLanguage("FoundBy", QT_TRANSLATE_NOOP("FoundBy", "%1 (told by %2)"));
    return words::fillIn(text, {answer, all.join(u", "_s)});
}

} // namespace strandbench
