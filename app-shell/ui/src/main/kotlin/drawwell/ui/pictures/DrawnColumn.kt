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
import drawwell.surface.Tick

/** A column whose line goes where the thumb is, and is `held` there. `drawing` hears every height, `drawn` the last. */
@Composable
internal fun DrawnColumn(
    amount: AmountColumn,
    held: Float?,
    drawing: (Float) -> Unit,
    drawn: (Float) -> Unit,
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
                setProgress { drawn(it); true }
            }
            .pointerInput(amount.column.part) {
                awaitEachGesture {
                    val down = awaitFirstDown()
                    down.consume()
                    var last = readings.nearest(1 - down.position.y / size.height)
                    hears(last)
                    drag(down.id) { change ->
                        change.consume()
                        last = readings.nearest(1 - change.position.y / size.height)
                        hears(last)
                    }
                    ends(last)
                }
            },
    ) {
        Shaft(height, amount.column.ghost, Modifier.fillMaxSize(), held != null)
    }
}

/** The height among those that can be read which lies nearest to the thumb. */
internal fun List<Tick>.nearest(height: Float): Float {
    val within = height.coerceIn(0f, 1f)
    return minByOrNull { kotlin.math.abs(it.at - within) }?.at ?: within
}

/** What is read at a height. */
internal fun List<Tick>.at(height: Float): String? = minByOrNull { kotlin.math.abs(it.at - height) }?.label
