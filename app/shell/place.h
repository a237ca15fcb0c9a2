// SPDX-License-Identifier: GPL-3.0-or-later
// Where on the glass somebody is: every screen that can be shown below the ribbon.
#pragma once

namespace strandbench {

enum class Place {
    Home,
    JobNumber,
    Panel,
    Person,
    SetUp,
    Calibrate,
    Repair,
    Why,
    HowToTell,
    Bead,
    Weigh,
    BeadTrial,
    Curve,
    Answers,
    Lots,
    ReadAgain,
    ReadWhileCuring,
    Mixes,
    Today,
    Record,
    Sheet,
    LotList,
    LotPage,
    Pat,
    Forget,
    Practice, ///< which of its screens, the flow knows
    // The air: makeAir().
    Air,
    Dew,
    Vapour,
    Fire,
    // The supervisor's: makeSupervisors().
    Pin,
    OverrideWhy,
    CorrectWhich,
    CorrectText,
    BenchDay,
    OldPin,
    NewPin,
    NewPinAgain,
    // The shop's product sheets: makeProducts().
    Product,
    ProductKind,
    ProductEdit,
    ProductPick,
    ProductFolder,
    ProductFaults,
    // The day looked through: makeReview().
    Review,
    ReviewBy,    ///< by what it is narrowed
    ReviewValue, ///< and to which of them
    Closing,     ///< a repair's signing off or returning, with what its record lacks
    ReturnWhy,
    ReturnText,
    Timeline,
    RepairLots,
    Figures,
    Figure,
    FigureLot,
    DayFiles,
    // What was done long ago: makeFinding().
    Find,
    Found,
    LotTrace,
    RecallFolder,
    // The shelf: makeStock().
    Stock,
    StockLotPage,
    StockProduct,
    StockLotNumber,
    StockBookIn,
    StockDated,
    StockBestBefore,
    StockCount,
    StockChangeWhy,
    StockChangeBy,
    StockEndWhy,
    StockThrownAway,
    StockMoved,
    StockProbe,
    StockMoves,
    Reorder,
    ReorderLevel,
    StockNotes, ///< of a repair's plan
    // The record's keeping: makeKeeping().
    KeepFolder,
    LogPick,
    LogFolder,
    KeepWait,
    Kept,
    KeepPin,
    // Beside the steps: makeBeside().
    Ask,
    ParkWhy,
    ParkTo,
    Harm,
    Photos,
    PhotoPick,
    PhotoFolder,
    Camera,
    Notes,
    NoteText,
    // Help, over whatever was shown: makeHelp().
    Help,
    Glossary,
    Legend,
    QuickCard,
};

/// Help stands over the place that it was asked at, which waits below as it was left.
[[nodiscard]] constexpr bool isHelp(Place place) { return place >= Place::Help; }

} // namespace strandbench
