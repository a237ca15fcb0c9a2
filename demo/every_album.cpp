// SPDX-License-Identifier: GPL-3.0-or-later
#include "every_album.h"

#include "exchange/rules.h"
#include "walk/every_job.h"
#include "walk/pictures.h"

#include <QTemporaryDir>

#include <iostream>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

/// A bench of its own for one job, and where its pictures go.
class Page {
public:
    Page(const QString& folder, const QString& name, const AlbumLook& look, ContactSheet& sheet, bool zincNamed = true)
        : m_place(QDir(folder).filePath(name)),
          m_pictures(m_place),
          m_planned(zincNamed ? Catalogue{} : catalogueWithoutZinc())
    {
        m_ready = m_bench.isValid() && QDir().mkpath(m_place);
        ScriptedBench::Spec spec{m_bench.filePath(u"bench.sqlite"_s),
                                 workingMorning(),
                                 look.settings,
                                 look.glass,
                                 look.pixelsPerMillimetre,
                                 {}};
        if (!zincNamed)
            spec.planning.emplace(PlanningSet{builtInTable(), m_planned, builtInSteps(), Assumptions{}, m_engine});
        m_scripted = std::make_unique<ScriptedBench>(spec);
        m_ready = m_ready && !m_scripted->trouble();
        sheet.begin(name);
        m_pictures.kept = [&sheet](const QString& screen, const QImage& picture) { sheet.add(screen, picture); };
    }
    [[nodiscard]] bool ready() const { return m_ready; }
    ScriptedBench& bench() { return *m_scripted; }
    [[nodiscard]] bool keep() { return m_pictures.keepScreen(m_scripted->window()); }
    [[nodiscard]] bool keepHome()
    {
        m_scripted->window().showHome();
        m_scripted->thumb().settle();
        return keep();
    }

private:
    QTemporaryDir m_bench;
    QString m_place;
    Pictures m_pictures;
    Catalogue m_planned;
    CureEngine m_engine;
    std::unique_ptr<ScriptedBench> m_scripted;
    bool m_ready = false;
};

bool failed(const QString& name, const QString& why)
{
    std::cerr << name.toStdString() << ": " << why.toStdString() << '\n';
    return false;
}

bool keepWalk(Page& page, const WalkedJob& walked)
{
    if (!page.ready())
        return failed(walked.name, u"no bench"_s);
    Walk walk(page.bench(), walked.job);
    while (walk.next()) {
        if (!page.keep())
            return failed(walked.name, u"a picture cannot be written"_s);
        if (page.bench().window().screen()->objectName() == u"screen_plan"_s) {
            Thumb thumb = page.bench().thumb();
            if (!thumb.tap(u"why"_s) || !page.keep() || !thumb.tap(u"answer_back"_s))
                return failed(walked.name, u"the reasons do not show"_s);
        }
        if (!walk.step())
            return failed(walked.name, walk.why());
    }
    return page.keep() || failed(walked.name, u"a picture cannot be written"_s);
}

bool keepRefusal(Page& page, const RefusedJob& refused)
{
    if (!page.ready())
        return failed(refused.stop, u"no bench"_s);
    Walk walk(page.bench(), refused.found);
    if (!walk.walkTo(Station::Decide))
        return failed(refused.stop, walk.why());
    if (!page.keep() || !walk.step() || !page.keep() || !page.keepHome())
        return failed(refused.stop, u"it cannot be parked"_s);
    return true;
}

} // namespace

bool keepEveryScreen(const QString& folder, const AlbumLook& look, ContactSheet& sheet)
{
    const auto wanted = [&](const QString& name) { return look.only.isEmpty() || look.only == name; };
    bool all = true;
    for (const WalkedJob& each : everyWalk()) {
        if (!wanted(each.name))
            continue;
        Page page(folder, each.name, look, sheet);
        all = keepWalk(page, each) && all;
    }
    for (const RefusedJob& each : everyRefusal()) {
        if (!wanted(each.stop))
            continue;
        Page page(folder, u"refused_"_s + each.stop, look, sheet, each.zincNamed);
        all = keepRefusal(page, each) && all;
    }
    return all;
}

void addPictures(const QString& folder, const QString& glass, ContactSheet& sheet)
{
    const QDir all(folder);
    for (const QString& each : all.entryList(QDir::Dirs | QDir::NoDotAndDotDot, QDir::Name)) {
        const QDir pictures(all.filePath(each));
        const QStringList files = pictures.entryList({glass + u"_*.png"_s}, QDir::Files, QDir::Name);
        if (!files.isEmpty())
            sheet.begin(each);
        for (const QString& file : files)
            sheet.add(file.section(u'_', 1).section(u'.', 0, 0), QImage(pictures.filePath(file)));
    }
}

} // namespace strandbench
