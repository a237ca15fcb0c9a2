// SPDX-License-Identifier: GPL-3.0-or-later
#include "words/table.h"

#include <QCoreApplication>
#include <QLatin1StringView>

#include <algorithm>

namespace strandbench::words {
namespace {

const Line* find(std::span<const Line> lines, const QString& code)
{
    const auto found = std::find_if(lines.begin(), lines.end(),
                                    [&](const Line& line) { return code == QLatin1StringView(line.code); });
    return found == lines.end() ? nullptr : &*found;
}

} // namespace

QString lookUp(const char* context, std::span<const Line> lines, const QString& code)
{
    const Line* line = find(lines, code);
    return line ? inLanguage(context, line->text) : u'[' + code + u']';
}

bool holds(std::span<const Line> lines, const QString& code) { return find(lines, code) != nullptr; }

QString inLanguage(const char* context, const char* text) { return QCoreApplication::translate(context, text); }

QString fillIn(const QString& text, const QStringList& arguments)
{
    QString filled;
    for (qsizetype i = 0; i < text.size(); ++i) {
        const qsizetype place = i + 1 < text.size() ? text.at(i + 1).digitValue() - 1 : -1;
        if (text.at(i) == u'%' && place >= 0 && place < arguments.size()) {
            filled += arguments.at(place);
            ++i;
        } else {
            filled += text.at(i);
        }
    }
    return filled;
}

QString oneLine(QString text)
{
    const auto breaks = [](QChar c) {
        return c.category() == QChar::Other_Control || c.category() == QChar::Separator_Line ||
               c.category() == QChar::Separator_Paragraph;
    };
    std::replace_if(text.begin(), text.end(), breaks, QChar(u' '));
    return text;
}

} // namespace strandbench::words
