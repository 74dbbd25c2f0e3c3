package drawwell.ui.pictures

import androidx.compose.foundation.gestures.awaitEachGesture
import androidx.compose.foundation.gestures.awaitFirstDown
import androidx.compose.foundation.gestures.drag
import androidx.compose.foundation.layout.Box
import androidx.compose.foundation.layout.fillMaxSize
import androidx.compose.runtime.Composable
import androidx.compose.runtime.getValue
import androidx.compose.runtime.rememberUpdatedState
import androidx.compose.ui.Modifier
import androidx.compose.ui.input.pointer.pointerInput
import androidx.compose.ui.platform.testTag
import androidx.compose.ui.semantics.ProgressBarRangeInfo
import androidx.compose.ui.semantics.contentDescription
import androidx.compose.ui.semantics.progressBarRangeInfo
import androidx.compose.ui.semantics.semantics
import androidx.compose.ui.semantics.setProgress
import drawwell.surface.AmountColumn
import drawwell.surface.Reading

/** A column whose line goes where the thumb is, and is `held` there. `drawing` hears every height, `drawn` what was read at the last. */
@Composable
internal fun DrawnColumn(
    amount: AmountColumn,
    held: Float?,
    drawing: (Float) -> Unit,
    drawn: (Reading) -> Unit,
    modifier: Modifier = Modifier,
) {
    val readings by rememberUpdatedState(amount.readings)
    val hears by rememberUpdatedState(drawing)
    val ends by rememberUpdatedState(drawn)
    val height = held ?: amount.column.height
    Box(
        modifier
            .testTag("column-${amount.column.part.name.lowercase()}")
            .semantics {
                contentDescription = amount.column.spoken
                progressBarRangeInfo = ProgressBarRangeInfo(height ?: 0f, 0f..1f)
                setProgress { height -> amount.readings.nearest(height)?.let(drawn) != null }
            }
            .pointerInput(amount.column.part) {
                awaitEachGesture {
                    val down = awaitFirstDown()
                    down.consume()
                    var last = readings.nearest(1 - down.position.y / size.height)
                    last?.let { hears(it.at) }
                    drag(down.id) { change ->
                        change.consume()
                        last = readings.nearest(1 - change.position.y / size.height)
                        last?.let { hears(it.at) }
                    }
                    last?.let(ends)
                }
            },
    ) {
        Shaft(height, amount.column.ghost, Modifier.fillMaxSize(), held != null)
    }
}

/** What can be read nearest to the thumb. */
internal fun List<Reading>.nearest(height: Float): Reading? = minByOrNull { kotlin.math.abs(it.at - height) }
