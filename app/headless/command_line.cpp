// SPDX-License-Identifier: GPL-3.0-or-later
#include "headless/command_line.h"

#include "languages.h"

#include <QCommandLineParser>

#include <algorithm>

using namespace Qt::StringLiterals;

namespace strandbench::headless {
namespace {

QString text(const char* latin) { return QString::fromLatin1(latin); }

void addOptions(QCommandLineParser& parser, const Command* command)
{
    parser.addOption(QCommandLineOption(QStringList{u"h"_s, u"help"_s}));
    parser.addOption(QCommandLineOption(QStringList{u"v"_s, u"version"_s}));
    parser.addOption(QCommandLineOption(u"lang"_s, {}, u"xx"_s));
    if (!command) { // the bench's own, beside one that is refused
        parser.addOption(QCommandLineOption(u"log"_s, {}, u"DB"_s));
        parser.addOption(QCommandLineOption(u"glass"_s, {}, u"WxH"_s));
        return;
    }
    for (const OptionRule& each : command->options)
        parser.addOption(QCommandLineOption(text(each.name), {}, each.value ? text(each.value) : QString()));
}

/// How often an option was given; one that takes no value has none to count.
qsizetype timesGiven(const QCommandLineParser& parser, const QString& name, const QString& value)
{
    return value.isEmpty() ? parser.optionNames().count(name) : parser.values(name).size();
}

void judgeOnce(const QCommandLineParser& parser, const QString& name, const QString& value, QStringList& messages)
{
    const auto given = timesGiven(parser, name, value);
    if (given > 1)
        messages << say(QT_TRANSLATE_NOOP("Headless", "--%1: given %2 times; allowed is once"),
                        {name, QString::number(given)});
    if (given == 1 && !value.isEmpty() && parser.value(name).isEmpty())
        messages << say(QT_TRANSLATE_NOOP("Headless", "--%1: must not be empty; it needs %2"), {name, value});
}

/// Options that must be there, empty ones, and any given twice.
void judgeOptions(const QCommandLineParser& parser, const Command& command, QStringList& messages)
{
    for (const OptionRule& each : command.options) {
        if (each.required && !parser.isSet(text(each.name)))
            messages << say(QT_TRANSLATE_NOOP("Headless", "--%1: missing; it needs %2"),
                            {text(each.name), text(each.value)});
        judgeOnce(parser, text(each.name), each.value ? text(each.value) : QString(), messages);
    }
    judgeOnce(parser, u"lang"_s, u"xx"_s, messages);
}

void judgeWords(const QStringList& words, const Command& command, QStringList& messages)
{
    if (command.takesFile && words.isEmpty())
        messages << say(QT_TRANSLATE_NOOP("Headless", "FILE: missing; it is a file, or - for standard input"));
    if (command.takesFile && !words.isEmpty() && words.constFirst().isEmpty())
        messages << say(
            QT_TRANSLATE_NOOP("Headless", "FILE: must not be empty; it is a file, or - for standard input"));
    for (qsizetype i = command.takesFile ? 1 : 0; i < words.size(); ++i)
        messages << say(QT_TRANSLATE_NOOP("Headless", "'%1': one word too many"), {words.at(i)});
}

/// An unknown option as it was typed: the parser tells it without its dashes.
QString asTyped(const QString& name, const QStringList& arguments)
{
    const QString both = u"--"_s + name;
    for (const QString& each : arguments)
        if (each == both || each.startsWith(both + u'='))
            return both;
    return u'-' + name;
}

QString optionLine(const QString& name, const QString& help)
{
    return u"  %1 %2\n"_s.arg(name.leftJustified(22), help);
}

QString commonOptions()
{
    return optionLine(u"--lang xx"_s, say(QT_TRANSLATE_NOOP("Headless", "Language of the texts: %1; otherwise en."),
                                          {carriedLanguages().join(u", "_s)})) +
           optionLine(u"-h, --help"_s, say(QT_TRANSLATE_NOOP("Headless", "This help."))) +
           optionLine(u"-v, --version"_s, say(QT_TRANSLATE_NOOP("Headless", "The version.")));
}

} // namespace

QString languageAsked(const QStringList& arguments)
{
    for (qsizetype i = 0; i < arguments.size(); ++i) {
        if (arguments.at(i).startsWith(u"--lang="_s))
            return arguments.at(i).mid(7);
        if (arguments.at(i) == u"--lang"_s && i + 1 < arguments.size())
            return arguments.at(i + 1);
    }
    return {};
}

Parsed parse(const Command* command, const QStringList& arguments)
{
    QCommandLineParser parser;
    parser.setSingleDashWordOptionMode(QCommandLineParser::ParseAsLongOptions);
    addOptions(parser, command);
    const bool read = parser.parse(QStringList{u"strandbench"_s} + arguments);
    if (parser.isSet(u"help"_s))
        return Ask::Help;
    if (parser.isSet(u"version"_s))
        return Ask::Version;

    QStringList messages;
    for (const QString& each : parser.unknownOptionNames())
        messages << say(QT_TRANSLATE_NOOP("Headless", "'%1': no such option; --help lists them"),
                        {asTyped(each, arguments)});
    if (!read && messages.isEmpty()) // an option at the end without its value
        messages << say(QT_TRANSLATE_NOOP("Headless", "'%1': its value is missing"), {arguments.constLast()});
    else if (command) {
        judgeOptions(parser, *command, messages);
        judgeWords(parser.positionalArguments(), *command, messages);
    }
    if (!messages.isEmpty())
        return messages;

    Arguments found;
    if (command)
        for (const OptionRule& each : command->options)
            if (parser.isSet(text(each.name)))
                found.options.insert(text(each.name), parser.value(text(each.name)));
    found.file = parser.positionalArguments().value(0);
    return found;
}

QString helpOf(const Command* command)
{
    QString help;
    if (command) {
        help = say(QT_TRANSLATE_NOOP("Headless", "Usage: %1"),
                   {u"strandbench %1%2 [options]"_s.arg(text(command->name),
                                                        command->takesFile ? u" FILE"_s : QString())}) +
               u"\n"_s + say(command->help) + u"\n\n"_s;
        for (const OptionRule& each : command->options)
            help += optionLine(u"--%1 %2"_s.arg(text(each.name), each.value ? text(each.value) : QString()).trimmed(),
                               say(each.help));
    } else {
        help = say(QT_TRANSLATE_NOOP("Headless", "Usage: %1"), {u"strandbench [command] [options]"_s}) + u"\n"_s +
               say(QT_TRANSLATE_NOOP("Headless", "Without a command the bench opens.")) + u"\n\n"_s;
        for (const Command& each : commands())
            help += optionLine(text(each.name), say(each.help));
        help += u'\n' + optionLine(u"--log DB"_s, say(QT_TRANSLATE_NOOP("Headless", "The log that the bench opens."))) +
                optionLine(u"--glass WxH"_s, say(QT_TRANSLATE_NOOP("Headless", "A window of this size instead of the "
                                                                               "full screen.")));
    }
    return help + commonOptions();
}

} // namespace strandbench::headless
