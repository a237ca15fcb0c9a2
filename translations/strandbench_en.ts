<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="en">
<context>
    <name>Deviations</name>
    <message numerus="yes">
        <source>%n deviation(s)</source>
        <translation>
            <numerusform>%n deviation</numerusform>
            <numerusform>%n deviations</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>FigureChart</name>
    <message numerus="yes">
        <source>+%n in the table</source>
        <translation>
            <numerusform>+%n in the table</numerusform>
            <numerusform>+%n in the table</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>FigureTold</name>
    <message numerus="yes">
        <source>%1 of %n repair(s) right the first time: %2. The true share may lie anywhere from %3 to %4.</source>
        <extracomment>%1 is a number, %2 to %4 are shares</extracomment>
        <translation>
            <numerusform>%1 of %n repair right the first time: %2. The true share may lie anywhere from %3 to %4.</numerusform>
            <numerusform>%1 of %n repairs right the first time: %2. The true share may lie anywhere from %3 to %4.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n repair(s)</source>
        <translation>
            <numerusform>%n repair</numerusform>
            <numerusform>%n repairs</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Most is lost at ‘%1’: half of %n repair(s) took %2 or more, the plan said %3.</source>
        <translation>
            <numerusform>Most is lost at ‘%1’: half of %n repair took %2 or more, the plan said %3.</numerusform>
            <numerusform>Most is lost at ‘%1’: half of %n repairs took %2 or more, the plan said %3.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n time(s)</source>
        <translation>
            <numerusform>%n time</numerusform>
            <numerusform>%n times</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Most often: %1, %2 of %n deviation(s), %3.</source>
        <extracomment>%1 is a kind of deviation, %2 a number, %3 a share</extracomment>
        <translation>
            <numerusform>Most often: %1, %2 of %n deviation, %3.</numerusform>
            <numerusform>Most often: %1, %2 of %n deviations, %3.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>The first %n kind(s) make up %1.</source>
        <translation>
            <numerusform>The first kind makes up %1.</numerusform>
            <numerusform>The first %n kinds make up %1.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n repair(s) cannot be read and are not counted.</source>
        <translation>
            <numerusform>%n repair cannot be read and is not counted.</numerusform>
            <numerusform>%n repairs cannot be read and are not counted.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>GelTold</name>
    <message numerus="yes">
        <source>%n gel(s) marked, the newest: %1.</source>
        <extracomment>%1 is what is unusual with the newest of them: &quot;gel 31 lies outside the limits&quot;</extracomment>
        <translation>
            <numerusform>%n gel marked, the newest: %1.</numerusform>
            <numerusform>%n gels marked, the newest: %1.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n gel(s), on average %1.</source>
        <extracomment>%1: &quot;12 % slower than the sheet&quot;</extracomment>
        <translation>
            <numerusform>%n gel, on average %1.</numerusform>
            <numerusform>%n gels, on average %1.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>A control chart needs two gels of a lot; in these days %n was seen.</source>
        <translation>
            <numerusform>A control chart needs two gels of a lot; in these days %n was seen.</numerusform>
            <numerusform>A control chart needs two gels of a lot; in these days %n were seen.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>Keeping</name>
    <message numerus="yes">
        <source>%n act(s) do not follow on the restored log.</source>
        <translation>
            <numerusform>%n act does not follow on the restored log.</numerusform>
            <numerusform>%n acts do not follow on the restored log.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>Outlooks</name>
    <message numerus="yes">
        <source>%n lift(s).</source>
        <translation>
            <numerusform>%n lift.</numerusform>
            <numerusform>%n lifts.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>Phrases</name>
    <message numerus="yes">
        <source>%n more mix(es) running</source>
        <translation>
            <numerusform>%n more mix running</numerusform>
            <numerusform>%n more mixes running</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>from %n batch(es) of this lot</source>
        <translation>
            <numerusform>from %n batch of this lot</numerusform>
            <numerusform>from %n batches of this lot</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>from %n other lot(s) of this product</source>
        <translation>
            <numerusform>from %n other lot of this product</numerusform>
            <numerusform>from %n other lots of this product</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>QuickCard</name>
    <message numerus="yes">
        <source>%n more product(s) under bench set-up.</source>
        <translation>
            <numerusform>%n more product under bench set-up.</numerusform>
            <numerusform>%n more products under bench set-up.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>RecallList</name>
    <message numerus="yes">
        <source>%n batch(es)</source>
        <translation>
            <numerusform>%n batch</numerusform>
            <numerusform>%n batches</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>ReviewChoices</name>
    <message numerus="yes">
        <source>%n repair(s)</source>
        <translation>
            <numerusform>%n repair</numerusform>
            <numerusform>%n repairs</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>Roles</name>
    <message numerus="yes">
        <source>+%n more</source>
        <translation>
            <numerusform>+%n more</numerusform>
            <numerusform>+%n more</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>Words</name>
    <message numerus="yes">
        <source>%n batch(es)</source>
        <translation>
            <numerusform>%n batch</numerusform>
            <numerusform>%n batches</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>strandbench::BenchWindow</name>
    <message numerus="yes">
        <source>%n act(s) wait.</source>
        <translation>
            <numerusform>%n act waits.</numerusform>
            <numerusform>%n acts wait.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>strandbench::ClosingScreen</name>
    <message numerus="yes">
        <source>The record lacks %n thing(s)</source>
        <translation>
            <numerusform>The record lacks %n thing</numerusform>
            <numerusform>The record lacks %n things</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>strandbench::DayReviewScreen</name>
    <message numerus="yes">
        <source>%n to sign off or return</source>
        <translation>
            <numerusform>%n to sign off or return</numerusform>
            <numerusform>%n to sign off or return</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n repair(s)</source>
        <translation>
            <numerusform>%n repair</numerusform>
            <numerusform>%n repairs</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n need eyes first</source>
        <translation>
            <numerusform>%n needs eyes first</numerusform>
            <numerusform>%n need eyes first</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>strandbench::DewScreen</name>
    <message numerus="yes">
        <source>Nothing was read in the last %n day(s).</source>
        <translation>
            <numerusform>Nothing was read on the last day.</numerusform>
            <numerusform>Nothing was read in the last %n days.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n reading(s), each within the limit of %1.</source>
        <translation>
            <numerusform>%n reading, within the limit of %1.</numerusform>
            <numerusform>%n readings, each within the limit of %1.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n reading(s) below the limit of %1</source>
        <translation>
            <numerusform>%n reading below the limit of %1</numerusform>
            <numerusform>%n readings below the limit of %1</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>strandbench::FigureLotScreen</name>
    <message numerus="yes">
        <source>%n gel(s), the last on %1</source>
        <translation>
            <numerusform>%n gel, the last on %1</numerusform>
            <numerusform>%n gels, the last on %1</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>strandbench::HomeScreen</name>
    <message numerus="yes">
        <source>%n in all</source>
        <translation>
            <numerusform>%n in all</numerusform>
            <numerusform>%n in all</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>strandbench::LotTraceScreen</name>
    <message numerus="yes">
        <source>%1 in %n repair(s)</source>
        <translation>
            <numerusform>%1 in %n repair</numerusform>
            <numerusform>%1 in %n repairs</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>strandbench::MixesScreen</name>
    <message numerus="yes">
        <source>%n in all</source>
        <translation>
            <numerusform>%n in all</numerusform>
            <numerusform>%n in all</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>strandbench::PinScreen</name>
    <message numerus="yes">
        <source>%n digit(s)</source>
        <translation>
            <numerusform>%n digit</numerusform>
            <numerusform>%n digits</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>strandbench::PlanScreen</name>
    <message numerus="yes">
        <source>! %n to mind</source>
        <translation>
            <numerusform>! %n to mind</numerusform>
            <numerusform>! %n to mind</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>strandbench::ProductPageScreen</name>
    <message numerus="yes">
        <source>and %n earlier</source>
        <translation>
            <numerusform>and %n earlier</numerusform>
            <numerusform>and %n earlier</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>strandbench::RefusalScreen</name>
    <message numerus="yes">
        <source>and %n more</source>
        <translation>
            <numerusform>and %n more</numerusform>
            <numerusform>and %n more</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>strandbench::RepairsScreen</name>
    <message numerus="yes">
        <source>%n day(s)</source>
        <translation>
            <numerusform>%n day</numerusform>
            <numerusform>%n days</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>up to today; tap: %n day(s)</source>
        <translation>
            <numerusform>up to today; tap: %n day</numerusform>
            <numerusform>up to today; tap: %n days</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Reading the records: %1 of %n repair(s)</source>
        <translation>
            <numerusform>Reading the records: %1 of %n repair</numerusform>
            <numerusform>Reading the records: %1 of %n repairs</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>strandbench::SetUpSheetsScreen</name>
    <message numerus="yes">
        <source>%n version(s)</source>
        <translation>
            <numerusform>%n version</numerusform>
            <numerusform>%n versions</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>strandbench::SkillsScreen</name>
    <message numerus="yes">
        <source>%n panel(s) worked</source>
        <translation>
            <numerusform>%n panel worked</numerusform>
            <numerusform>%n panels worked</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>strandbench::StockListScreen</name>
    <message numerus="yes">
        <source>%n unopened</source>
        <translation>
            <numerusform>%n unopened</numerusform>
            <numerusform>%n unopened</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n product(s) to reorder</source>
        <translation>
            <numerusform>%n product to reorder</numerusform>
            <numerusform>%n products to reorder</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>strandbench::StockLotScreen</name>
    <message numerus="yes">
        <source>%n unopened</source>
        <translation>
            <numerusform>%n unopened</numerusform>
            <numerusform>%n unopened</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>strandbench::StockNotesScreen</name>
    <message numerus="yes">
        <source>! %n to mind</source>
        <translation>
            <numerusform>! %n to mind</numerusform>
            <numerusform>! %n to mind</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>strandbench::TodayScreen</name>
    <message numerus="yes">
        <source>%n entry(ies): clocks, refused acts, PIN</source>
        <translation>
            <numerusform>%n entry: clocks, refused acts, PIN</numerusform>
            <numerusform>%n entries: clocks, refused acts, PIN</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>strandbench::TroubleWindow</name>
    <message numerus="yes">
        <source>%n entries that hold are saved in %1.</source>
        <translation>
            <numerusform>%n entry that holds is saved in %1.</numerusform>
            <numerusform>%n entries that hold are saved in %1.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n more can be read and stand as text beside it.</source>
        <translation>
            <numerusform>%n more can be read and stands as text beside it.</numerusform>
            <numerusform>%n more can be read and stand as text beside it.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>strandbench::VapourScreen</name>
    <message numerus="yes">
        <source>%n batch(es) whose sheet is not loaded: not counted.</source>
        <translation>
            <numerusform>%n batch whose sheet is not loaded: not counted.</numerusform>
            <numerusform>%n batches whose sheet is not loaded: not counted.</numerusform>
        </translation>
    </message>
</context>
</TS>
