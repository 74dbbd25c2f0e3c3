package drawwell.ui.places

import androidx.compose.foundation.clickable
import androidx.compose.foundation.layout.Box
import androidx.compose.foundation.layout.Column
import androidx.compose.foundation.layout.Spacer
import androidx.compose.foundation.layout.fillMaxHeight
import androidx.compose.foundation.layout.fillMaxWidth
import androidx.compose.foundation.layout.height
import androidx.compose.foundation.layout.heightIn
import androidx.compose.foundation.layout.padding
import androidx.compose.foundation.layout.width
import androidx.compose.runtime.Composable
import androidx.compose.runtime.LaunchedEffect
import androidx.compose.runtime.MutableState
import androidx.compose.runtime.State
import androidx.compose.runtime.getValue
import androidx.compose.runtime.mutableStateOf
import androidx.compose.runtime.remember
import androidx.compose.runtime.setValue
import androidx.compose.ui.Alignment
import androidx.compose.ui.Modifier
import androidx.compose.ui.focus.FocusRequester
import androidx.compose.ui.focus.focusRequester
import androidx.compose.ui.platform.testTag
import androidx.compose.ui.semantics.clearAndSetSemantics
import androidx.compose.ui.semantics.contentDescription
import androidx.compose.ui.semantics.heading
import androidx.compose.ui.semantics.onClick
import androidx.compose.ui.semantics.semantics
import androidx.compose.ui.unit.dp
import drawwell.surface.AmountColumn
import drawwell.surface.AmountsScreen
import drawwell.surface.Event
import drawwell.surface.Part
import drawwell.ui.forms.TypedField
import drawwell.ui.look.LocalLettering
import drawwell.ui.look.LocalTone
import drawwell.ui.look.Measures
import drawwell.ui.look.largeType
import drawwell.ui.parts.ActionButton
import drawwell.ui.parts.AmountSteps
import drawwell.ui.parts.HandRow
import drawwell.ui.parts.OneLine
import drawwell.ui.parts.Pane
import drawwell.ui.parts.SetUpRow
import drawwell.ui.parts.ThumbScreen
import drawwell.ui.parts.Words
import drawwell.ui.parts.underlined
import drawwell.ui.pictures.DrawnColumn
import drawwell.ui.pictures.Scale
import drawwell.ui.pictures.Sides
import drawwell.ui.pictures.nearest
import drawwell.ui.pictures.scaleWidth

/** After a session: the thumb draws the water up to what came. */
@Composable
internal fun AmountsView(pane: Pane, amounts: AmountsScreen) {
    val lettering = LocalLettering.current
    /** Where the thumb is now, until the core has answered. */
    val drawing = remember(amounts.session) { Part.entries.associateWith { mutableStateOf<Float?>(null) } }
    LaunchedEffect(amounts, pane.trouble) { drawing.values.forEach { it.value = null } }
    ThumbScreen(
        pane,
        pinned = {
            val large = largeType()
            HandRow {
                ActionButton(amounts.later, pane.send, Modifier.weight(if (large) 3f else 2f))
                ActionButton(amounts.done, pane.send, Modifier.weight(3f).heightIn(min = 72.dp))
            }
        },
        reading = {
            Words(amounts.headline, lettering.headline, Modifier.semantics { heading() })
            Words(amounts.lead.ifEmpty { amounts.caption }, lettering.caption, soft = true)
            Sides(Modifier.padding(top = 10.dp)) {
                amounts.columns.forEachIndexed { place, column ->
                    if (place > 0 && !largeType()) Spacer(Modifier.width(scaleWidth(amounts.scale)))
                    Head(column, drawing.getValue(column.column.part), pane, Modifier.weight(1f))
                }
            }
        },
        eyes = EYES,
        controls = { room ->
            val rows = listOf(amounts.together, amounts.keep).filter { it.options.isNotEmpty() }
            val lines = 1 + rows.sumOf { if (it.options.size > IN_A_LINE) 2 else 1 }
            val tall = (room - ROW * lines).coerceIn(LOWEST, TALLEST)
            Sides(Modifier.height(tall)) {
                amounts.columns.forEachIndexed { place, column ->
                    if (place > 0) Scale(amounts.scale, Modifier.fillMaxHeight())
                    Drawable(amounts.session, column, drawing.getValue(column.column.part), pane.send, Modifier.weight(1f))
                }
                if (amounts.columns.size == 1) Scale(amounts.scale, Modifier.fillMaxHeight())
            }
            Sides { amounts.columns.forEach { AmountSteps(it, pane.send, Modifier.weight(1f)) } }
            rows.forEach { SetUpRow(it, pane.send) }
        },
    )
}

/** What the column reads, where the eye can see it past the thumb. A tap on it types. */
@Composable
private fun Head(amount: AmountColumn, drawing: State<Float?>, pane: Pane, modifier: Modifier) {
    val lettering = LocalLettering.current
    val height = drawing.value
    val text = height?.let { amount.readings.nearest(it)?.label } ?: amount.column.text
    var typing by remember(amount.typing.value) { mutableStateOf(false) }
    Column(modifier) {
        Words(amount.column.label, lettering.label, Modifier.clearAndSetSemantics { }, soft = true)
        if (typing) {
            val focus = remember { FocusRequester() }
            LaunchedEffect(Unit) { focus.requestFocus() }
            TypedField(amount.typing, pane.trouble, pane.send, Modifier.fillMaxWidth().focusRequester(focus))
        } else {
            val said = height != null || amount.column.height != null
            val edge = LocalTone.current.edge
            val line = remember(edge) { Modifier.underlined(edge) }
            Box(
                Modifier.fillMaxWidth().heightIn(min = Measures.target).testTag("type-amount-${amount.column.part.name.lowercase()}")
                    .clickable { typing = true }
                    .semantics(mergeDescendants = true) {
                        contentDescription = amount.column.spoken
                        onClick(amount.typing.spoken) { typing = true; true }
                    },
                Alignment.CenterStart,
            ) {
                OneLine(text, if (said) lettering.amount else lettering.headline, line, soft = !said)
            }
        }
    }
}

@Composable
private fun Drawable(
    session: String,
    amount: AmountColumn,
    drawing: MutableState<Float?>,
    send: (Event) -> Unit,
    modifier: Modifier,
) {
    val part = amount.column.part
    DrawnColumn(
        amount,
        drawing.value,
        drawing = { drawing.value = it },
        drawn = { send(Event.DrawAmount(session, part, it.typed, amount.unit)) },
        modifier = modifier.fillMaxHeight(),
    )
}

/** A row below the columns: the steps, how it is measured, where it is kept. */
private val ROW = Measures.target + Measures.apart
/** Little to read here, and much to draw. */
private const val EYES = 0.22f
/** Choices that find room beside their label. */
private const val IN_A_LINE = 3
private val LOWEST = 112.dp
private val TALLEST = 520.dp
