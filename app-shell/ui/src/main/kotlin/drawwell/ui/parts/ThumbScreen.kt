package drawwell.ui.parts

import androidx.compose.foundation.layout.BoxWithConstraints
import androidx.compose.foundation.layout.Column
import androidx.compose.foundation.layout.ColumnScope
import androidx.compose.foundation.layout.fillMaxSize
import androidx.compose.foundation.layout.fillMaxWidth
import androidx.compose.foundation.layout.height
import androidx.compose.foundation.layout.PaddingValues
import androidx.compose.foundation.layout.padding
import androidx.compose.runtime.Composable
import androidx.compose.ui.Modifier
import androidx.compose.ui.unit.Dp
import androidx.compose.ui.unit.dp
import drawwell.surface.Tone
import drawwell.ui.look.Measures
import drawwell.ui.look.largeType

/**
 * A screen for one thumb: above, what the eye reads; below, all that is
 * touched. Where type is large or the window low, both flow as one and the
 * foot stays: what the screen is for comes first, then a `picture` that is for the eye alone, then
 * what is said beside it. `eyes` is the part of the screen above and `most` its end on a large
 * window, `flowing` is the picture where all flows.
 */
@Composable
internal fun ThumbScreen(
    pane: Pane,
    pinned: @Composable () -> Unit,
    reading: @Composable ColumnScope.(picture: Modifier) -> Unit,
    controls: @Composable ColumnScope.(room: Dp) -> Unit,
    beside: @Composable () -> Unit = {},
    eyes: Float = Measures.EYES,
    most: Dp = Dp.Infinity,
    flowing: Modifier = Modifier.height(PICTURE),
    picture: (@Composable ColumnScope.(Modifier) -> Unit)? = null,
) {
    BoxWithConstraints(Modifier.fillMaxSize()) {
        val whole = maxHeight
        val flows = largeType() || whole < LOW_WINDOW
        Column(Modifier.fillMaxSize()) {
            if (!flows) {
                Column(
                    Modifier.fillMaxWidth().height(minOf(whole * eyes, most)).padding(horizontal = Measures.margin)
                        .padding(top = 12.dp, bottom = 6.dp),
                ) {
                    reading(Modifier.weight(1f))
                    picture?.invoke(this, Modifier.weight(1f))
                }
            }
            Trouble(pane)
            val notices = pane.frame.notices
            val pinnedNotices = if (flows) 0 else 1
            notices.take(pinnedNotices).forEach {
                NoticeView(it, pane.send, Modifier.padding(horizontal = Measures.margin).padding(bottom = 2.dp))
            }
            // Where all flows, a caution stands on top: below the picture nobody would see it.
            val (cautions, others) = notices.drop(pinnedNotices).partition { flows && it.tone == Tone.CAUTION }
            BoxWithConstraints(Modifier.weight(1f)) {
                val room = if (flows) PICTURE * 2 else maxHeight - EDGE * 2
                Scrolling(Modifier.fillMaxSize(), PaddingValues(Measures.margin, EDGE)) {
                    cautions.forEach { NoticeView(it, pane.send) }
                    if (flows) reading(flowing)
                    if (!flows) others.forEach { NoticeView(it, pane.send) }
                    controls(room)
                    if (flows) {
                        picture?.invoke(this, flowing)
                        others.forEach { NoticeView(it, pane.send) }
                    }
                }
            }
            Foot(pane, pinned, beside)
        }
    }
}

@Composable
internal fun Trouble(pane: Pane) {
    pane.trouble?.let {
        TroubleView(it, pane.dismissTrouble, Modifier.padding(horizontal = Measures.margin).padding(bottom = 6.dp))
    }
}

private val LOW_WINDOW = 640.dp
private val PICTURE = 170.dp
private val EDGE = 6.dp
