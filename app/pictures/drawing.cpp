// SPDX-License-Identifier: GPL-3.0-or-later
#include "pictures/drawing.h"

#include "pictures/drawing_keys.h"

#include <QDir>
#include <QFile>
#include <QRegularExpression>
#include <QSvgRenderer>

#include <map>
#include <memory>
#include <stdexcept>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

QString pathOf(const QString& name) { return u":/drawings/%1.svg"_s.arg(name); }

QString readAll(const QString& name)
{
    QFile file(pathOf(name));
    if (!file.open(QIODevice::ReadOnly))
        throw std::logic_error("there is no drawing " + name.toStdString());
    return QString::fromUtf8(file.readAll());
}

/// What stands between <svg> and </svg>, without the title.
QString insideOf(const QString& name)
{
    static const QRegularExpression inside(u"<svg[^>]*>(?:\\s*<title>[^<]*</title>)?(.*)</svg>"_s,
                                           QRegularExpression::DotMatchesEverythingOption);
    const QRegularExpressionMatch match = inside.match(readAll(name));
    if (!match.hasMatch())
        throw std::logic_error(name.toStdString() + " is no drawing");
    return match.captured(1);
}

QString frameMark(int frame) { return u"<g id=\"frame%1\""_s.arg(frame); }

int framesIn(const QString& text)
{
    int frames = 0;
    while (text.contains(frameMark(frames + 1)))
        ++frames;
    return std::max(1, frames);
}

/// Qt's renderer plays no animation of groups, so every frame but one is taken off the picture.
QString inFrame(QString text, int frame)
{
    for (int each = framesIn(text); each >= 1; --each)
        if (each != frame)
            text.replace(frameMark(each), frameMark(each) + u" display=\"none\""_s);
    return text;
}

std::unique_ptr<QSvgRenderer> made(const QString& name, const Theme& theme, const QColor& ink, int frame)
{
    if (frame < 1 || frame > framesOf(name))
        throw std::logic_error(name.toStdString() + " has no frame " + std::to_string(frame));
    const QString text = recoloured(inFrame(drawingText(name), frame), theme, ink);
    auto renderer = std::make_unique<QSvgRenderer>(text.toUtf8());
    if (!renderer->isValid())
        throw std::logic_error(name.toStdString() + " cannot be read as a drawing");
    return renderer;
}

/// Each is read once for each look that it is shown in.
QSvgRenderer& renderer(const QString& name, const Theme& theme, const DrawingLook& look)
{
    static std::map<QString, std::unique_ptr<QSvgRenderer>> kept;
    const QColor ink = look.ink.value_or(theme.color(Role::Ink));
    const QString key =
        name + (theme.dayNight() == DayNight::Day ? u" day "_s : u" night "_s) + ink.name() + u" %1"_s.arg(look.frame);
    auto found = kept.find(key);
    if (found == kept.end())
        found = kept.emplace(key, made(name, theme, ink, look.frame)).first;
    return *found->second;
}

} // namespace

QString drawingText(const QString& name)
{
    static const QRegularExpression use(uR"(<use href="\.\./(\w+/\w+)\.svg"([^>]*)/>)"_s);
    const QString text = readAll(name);
    QString done;
    qsizetype from = 0;
    for (auto each = use.globalMatch(text); each.hasNext();) {
        const QRegularExpressionMatch match = each.next();
        done += QStringView(text).mid(from, match.capturedStart() - from);
        done += u"<g"_s + match.captured(2) + u'>' + insideOf(match.captured(1)) + u"</g>"_s;
        from = match.capturedEnd();
    }
    done += QStringView(text).mid(from);
    return done;
}

void paintDrawing(QPainter& painter, const QRectF& rect, const QString& name, const Theme& theme,
                  const DrawingLook& look)
{
    if (rect.isEmpty())
        return;
    QSvgRenderer& drawn = renderer(name, theme, look);
    QRectF room(QPointF(), drawn.viewBoxF().size().scaled(rect.size(), Qt::KeepAspectRatio));
    room.moveCenter(rect.center());
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    drawn.render(&painter, room);
    painter.restore();
}

QSizeF drawingSize(const QString& name)
{
    const QSvgRenderer drawn(drawingText(name).toUtf8());
    if (!drawn.isValid())
        throw std::logic_error(name.toStdString() + " cannot be read as a drawing");
    return drawn.viewBoxF().size();
}

int framesOf(const QString& name)
{
    static std::map<QString, int> counted;
    auto found = counted.find(name);
    if (found == counted.end())
        found = counted.emplace(name, framesIn(readAll(name))).first;
    return found->second;
}

bool hasDrawing(const QString& name) { return QFile::exists(pathOf(name)); }

QStringList drawingsIn(const QString& folder)
{
    QStringList names;
    const QStringList files = QDir(u":/drawings/"_s + folder).entryList({u"*.svg"_s}, QDir::Files, QDir::Name);
    for (const QString& file : files)
        names << folder + u'/' + file.chopped(4);
    return names;
}

} // namespace strandbench
