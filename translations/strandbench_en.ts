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
