// SPDX-License-Identifier: GPL-3.0-or-later
#include "recorded_disk.h"

#include "../watched_vfs.h"

#include <sqlite3.h>
#include <unistd.h>

#include <algorithm>
#include <filesystem>
#include <random>
#include <stdexcept>

namespace strandbench::test {
namespace {

constexpr qsizetype sector = 512;

using Kind = DiskStep::Kind;

/// The step that a call makes, if it makes one.
void take(std::vector<DiskStep>& steps, const CallOfDisk& call)
{
    if (!call.file)
        return;
    const std::string name = std::filesystem::path(call.file).filename().string();
    const bool there = ::access(call.file, F_OK) == 0;
    if (call.call == DiskCall::Open && (call.flags & SQLITE_OPEN_CREATE) && !there)
        steps.push_back({Kind::Create, name, {}, 0});
    else if (call.call == DiskCall::Delete && there)
        steps.push_back({Kind::Delete, name, {}, 0});
    else if (call.call == DiskCall::Write)
        steps.push_back(
            {Kind::Write, name, QByteArray(static_cast<const char*>(call.bytes), call.size), qsizetype(call.at)});
    else if (call.call == DiskCall::Truncate)
        steps.push_back({Kind::Truncate, name, {}, qsizetype(call.at)});
    else if (call.call == DiskCall::Sync)
        steps.push_back({Kind::Sync, name, {}, 0});
    else if (call.call == DiskCall::SyncFolder)
        steps.push_back({Kind::SyncFolder, {}, {}, 0});
}

void grow(QByteArray& file, qsizetype size)
{
    if (file.size() < size)
        file.append(size - file.size(), '\0');
}

void write(QByteArray& file, const DiskStep& step, qsizetype from, qsizetype size)
{
    grow(file, step.at + from + size);
    std::copy_n(step.bytes.constData() + from, size, file.data() + step.at + from);
}

/// Some sectors of a write, and perhaps the length that it would have given the file.
void tear(QByteArray& file, const DiskStep& step, std::mt19937& chance)
{
    const qsizetype end = step.at + step.bytes.size();
    if (chance() % 2)
        grow(file, end);
    for (qsizetype from = step.at; from < end;) {
        const qsizetype next = std::min(end, (from / sector + 1) * sector);
        if (chance() % 2)
            write(file, step, from - step.at, next - from);
        from = next;
    }
}

void make(QByteArray& file, const DiskStep& step, Fate fate, std::mt19937& chance)
{
    if (fate == Fate::Dropped)
        return;
    if (step.kind == Kind::Truncate)
        file.truncate(step.at);
    else if (fate == Fate::Torn)
        tear(file, step, chance);
    else
        write(file, step, 0, step.bytes.size());
}

} // namespace

std::vector<DiskStep> recorded(const std::function<void(const std::function<void()>&)>& run)
{
    std::vector<DiskStep> steps;
    const WatchedVfs watched([&](const CallOfDisk& call) {
        take(steps, call);
        return SQLITE_OK;
    });
    run([&] { steps.push_back({Kind::Acknowledged, {}, {}, 0}); });
    return steps;
}

void RecordedDisk::name(std::map<std::string, int>& folder, const Naming& naming)
{
    if (naming.node < 0)
        folder.erase(naming.name);
    else
        folder[naming.name] = naming.node;
}

void RecordedDisk::take(const DiskStep& step)
{
    if (step.kind == Kind::Acknowledged)
        return;
    if (step.kind == Kind::SyncFolder) {
        m_sure = m_now;
        m_unsure.clear();
        return;
    }
    if (step.kind == Kind::Create || step.kind == Kind::Delete) {
        const bool made = step.kind == Kind::Create;
        if (made)
            m_nodes.emplace_back();
        m_unsure.push_back({step.file, made ? int(m_nodes.size()) - 1 : -1});
        return name(m_now, m_unsure.back());
    }
    const auto known = m_now.find(step.file);
    if (known == m_now.end())
        throw std::runtime_error("a file that nobody made: " + step.file);
    Node& node = m_nodes[std::size_t(known->second)];
    if (step.kind != Kind::Sync)
        return node.unsure.push_back(step);
    std::mt19937 none;
    for (const DiskStep& each : node.unsure)
        make(node.sure, each, Fate::Kept, none);
    node.unsure.clear();
}

int RecordedDisk::unsynced() const
{
    auto all = m_unsure.size();
    for (const Node& node : m_nodes)
        all += node.unsure.size();
    return int(all);
}

Files RecordedDisk::afterCut(const Fates& fates, std::uint32_t chance) const
{
    std::mt19937 random(chance);
    const int all = unsynced();
    int which = 0;
    auto folder = m_sure;
    for (const Naming& naming : m_unsure) {
        const Fate fate = fates(which++, all);
        if (fate == Fate::Kept || (fate == Fate::Torn && random() % 2))
            name(folder, naming);
    }
    std::vector<QByteArray> bytes;
    for (const Node& node : m_nodes) {
        bytes.push_back(node.sure);
        for (const DiskStep& step : node.unsure)
            make(bytes.back(), step, fates(which++, all), random);
    }
    Files files;
    for (const auto& [name, node] : folder)
        files[name] = bytes[std::size_t(node)];
    return files;
}

} // namespace strandbench::test
