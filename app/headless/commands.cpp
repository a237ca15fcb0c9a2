// SPDX-License-Identifier: GPL-3.0-or-later
#include "headless/command.h"

#include "words/table.h"

#include <QJsonArray>
#include <QLatin1StringView>

#include <algorithm>

using namespace Qt::StringLiterals;

namespace strandbench::headless {

const std::vector<Command>& commands()
{
    static const std::vector<Command> all{planCommand(),   mixCommand(),     cureCommand(),   airCommand(),
                                          reportCommand(), verifyCommand(),  backupCommand(), keepCommand(),
                                          mergeCommand(),  restoreCommand(), rescueCommand(), superviseCommand()};
    return all;
}

const Command* commandNamed(const QString& name)
{
    const auto& all = commands();
    const auto found =
        std::find_if(all.begin(), all.end(), [&](const Command& each) { return name == QLatin1StringView(each.name); });
    return found == all.end() ? nullptr : &*found;
}

Outcome refused(const Faults& faults, const Words& words)
{
    Outcome outcome{Status::Refused, std::nullopt, {}};
    for (const Fault& each : faults)
        outcome.messages << words.fault(each, FieldNames::AsInput);
    return outcome;
}

Outcome ended(Status status, const QString& message) { return {status, std::nullopt, {message}}; }

QJsonArray reasonsToJson(const std::vector<Reason>& reasons, const Words& words)
{
    QJsonArray list;
    for (const Reason& each : reasons)
        list << QJsonObject{{u"code"_s, each.code}, {u"text"_s, words.reason(each)}};
    return list;
}

QString say(const char* text, const QStringList& arguments)
{
    return words::fillIn(words::inLanguage("Headless", text), arguments);
}

} // namespace strandbench::headless
