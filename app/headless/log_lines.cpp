// SPDX-License-Identifier: GPL-3.0-or-later
#include "headless/log_lines.h"

#include "headless/command.h"
#include "words/log_trouble.h"

#include <QFileInfo>

using namespace Qt::StringLiterals;

namespace strandbench::headless {

QString troubleLine(const QString& path, const LogFailure& failure)
{
    const LogTroubleText text = logTrouble(failure.trouble);
    const QString detail = failure.detail.isEmpty() ? QString() : u" ("_s + failure.detail.simplified() + u')';
    return u"%1: %2 %3%4"_s.arg(path, text.headline, text.whatToDo, detail);
}

std::optional<Fault> nameTaken(const QString& option, const QString& path)
{
    if (!QFileInfo::exists(path) && !QFileInfo(path).isSymLink())
        return std::nullopt;
    return Fault{
        option, path, FaultKind::NotOneOf, {say(QT_TRANSLATE_NOOP("Headless", "a name that no file has yet"))}};
}

QStringList breakLine(const QString& path, const VerifyReport& report)
{
    if (report.clean)
        return {};
    return {say(QT_TRANSLATE_NOOP("Headless", "%1: it breaks here: %2: %3"),
                {path, breakName(report.breaksAt), report.where.simplified()})};
}

} // namespace strandbench::headless
