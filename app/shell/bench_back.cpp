// SPDX-License-Identifier: GPL-3.0-or-later
// Where 'back' leads from each place. It only looks: nothing is undone by it.
#include "shell/bench_window.h"

#include <QScopedValueRollback>

namespace strandbench {

void BenchWindow::back()
{
    const QScopedValueRollback<bool> going(m_goesBack, true);
    leadBack();
}

void BenchWindow::leadBack()
{
    switch (m_place) {
    case Place::Practice:
        return backInPractice();
    case Place::Panel:
        return place(Place::JobNumber);
    case Place::Calibrate:
        return place(Place::SetUp);
    case Place::Why:
    case Place::StockNotes:
    case Place::HowToTell:
    case Place::Ask:
    case Place::Harm:
    case Place::Photos:
    case Place::Notes:
    case Place::Bead:
    case Place::Weigh:
    case Place::Curve:
    case Place::Answers:
    case Place::Lots:
    case Place::ReadAgain:
    case Place::ReadWhileCuring:
        return place(Place::Repair);
    case Place::BeadTrial:
        if (!m_layBead || m_trial.beads.size() < BeadCalibration::atLeast)
            return place(m_afterBead);
        m_layBead = false; // no other bead after all
        return place(Place::BeadTrial);
    case Place::ParkWhy:
        return place(Place::Ask);
    case Place::ParkTo:
        return place(Place::ParkWhy);
    case Place::PhotoPick:
        return place(m_afterPhoto);
    case Place::PhotoFolder:
    case Place::Camera:
        return place(Place::PhotoPick);
    case Place::NoteText:
        return place(Place::Notes);
    case Place::Sheet:
        return place(Place::Record);
    case Place::Record:
        return place(m_afterRecord);
    case Place::Review:
        return place(Place::Today);
    case Place::Figures:
    case Place::ReviewBy:
    case Place::DayFiles:
        return place(Place::Review);
    case Place::ReviewValue:
        return place(Place::ReviewBy);
    case Place::Closing:
    case Place::Timeline:
    case Place::RepairLots:
        return place(Place::Record);
    case Place::ReturnWhy:
        return place(Place::Closing);
    case Place::ReturnText:
        return place(Place::ReturnWhy);
    case Place::Figure:
        return place(m_figures.kind == FigureKind::Gel ? Place::FigureLot : Place::Figures);
    case Place::FigureLot:
        return place(Place::Figures);
    case Place::Find:
        return place(Place::Today);
    case Place::Found:
        return place(Place::Find);
    case Place::LotTrace:
        return place(m_finding.lotFrom);
    case Place::RecallFolder:
        return place(Place::LotTrace);
    case Place::LotList:
        return place(Place::Today);
    case Place::LotPage:
        return place(m_afterLot);
    case Place::Pat:
    case Place::Forget:
        return place(Place::LotPage);
    case Place::Dew:
    case Place::Vapour:
    case Place::Fire:
        return place(Place::Air);
    case Place::Air:
        return current() ? place(Place::Repair) : showHome();
    case Place::Pin:
        return place(m_asked->from);
    case Place::OverrideWhy:
        return place(Place::Repair);
    case Place::CorrectWhich:
        return place(Place::Closing);
    case Place::CorrectText:
        return place(Place::CorrectWhich);
    case Place::BenchDay:
        return place(Place::Today);
    case Place::OldPin:
        return place(Place::SetUp);
    case Place::NewPin:
        return place(m_parts.bench.door()->isSet() ? Place::OldPin : Place::SetUp);
    case Place::NewPinAgain:
        return place(Place::NewPin);
    case Place::Product:
    case Place::ProductKind:
    case Place::ProductPick:
        return place(Place::SetUp);
    case Place::ProductEdit:
        return place(m_products.from);
    case Place::ProductFolder:
        return place(m_products.exporting ? Place::Product : Place::ProductPick);
    case Place::ProductFaults:
        return place(Place::ProductPick);
    case Place::Stock:
        return m_stock.from == Place::StockNotes && m_repair ? place(Place::StockNotes) : showHome();
    case Place::StockProduct:
    case Place::StockLotPage:
    case Place::Reorder:
        return place(Place::Stock);
    case Place::StockLotNumber:
        return place(Place::StockProduct);
    case Place::StockBookIn:
        return place(m_stock.more ? Place::StockLotPage : Place::StockLotNumber);
    case Place::StockDated:
        return place(Place::StockBookIn);
    case Place::StockBestBefore:
        return place(Place::StockDated);
    case Place::StockCount:
    case Place::StockChangeWhy:
    case Place::StockEndWhy:
    case Place::StockMoved:
    case Place::StockProbe:
    case Place::StockMoves:
        return place(Place::StockLotPage);
    case Place::StockChangeBy:
        return place(Place::StockChangeWhy);
    case Place::StockThrownAway:
        return place(Place::StockEndWhy);
    case Place::ReorderLevel:
        return place(Place::Reorder);
    case Place::KeepFolder:
        return place(Place::SetUp);
    case Place::LogPick:
        return m_parts.restoring ? m_parts.startAgain() : place(Place::SetUp);
    case Place::LogFolder:
    case Place::KeepWait:
    case Place::Kept:
        if (m_keeping.doing)
            return; // until it is done
        return m_keeping.done ? m_parts.startAgain() : place(Place::LogPick);
    case Place::KeepPin:
        return place(Place::Kept);
    case Place::Help:
        return leaveHelp();
    case Place::Glossary:
    case Place::Legend:
    case Place::QuickCard:
        return m_help.straight ? leaveHelp() : place(Place::Help);
    case Place::Home:
    case Place::JobNumber:
    case Place::Person:
    case Place::SetUp:
    case Place::Mixes:
    case Place::Today:
        return showHome();
    case Place::Repair:
        break;
    }
    m_look = lookBefore(*current(), m_look);
    if (m_look)
        place(Place::Repair);
    else
        showHome();
}

} // namespace strandbench
