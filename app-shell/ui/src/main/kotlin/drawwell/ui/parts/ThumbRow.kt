package drawwell.ui.parts

import androidx.compose.foundation.layout.Arrangement
import androidx.compose.foundation.layout.Box
import androidx.compose.foundation.layout.Column
import androidx.compose.foundation.layout.FlowRow
import androidx.compose.foundation.layout.Row
import androidx.compose.foundation.layout.fillMaxWidth
import androidx.compose.foundation.layout.heightIn
import androidx.compose.foundation.layout.padding
import androidx.compose.runtime.Composable
import androidx.compose.runtime.CompositionLocalProvider
import androidx.compose.ui.Alignment
import androidx.compose.ui.Modifier
import androidx.compose.ui.platform.LocalLayoutDirection
import androidx.compose.ui.unit.dp
import drawwell.surface.Action
import drawwell.surface.Event
import drawwell.surface.Frame
import drawwell.surface.Sign
import drawwell.ui.look.LocalLettering
import drawwell.ui.look.LocalTone
import drawwell.ui.look.Measures
import drawwell.ui.look.largeType
import drawwell.ui.pictures.SignPicture

/**
 * Back, and what can be taken back, where the thumb is. Keeps its place when
 * there is nothing in it, so that nothing moves under the thumb.
 */
@Composable
internal fun ThumbRow(frame: Frame, send: (Event) -> Unit, beside: @Composable () -> Unit = {}) {
    val kept = if (largeType()) Modifier else Modifier.heightIn(min = Measures.target)
    CompositionLocalProvider(LocalLayoutDirection provides handDirection()) {
        FlowRow(
            kept.fillMaxWidth(),
            Arrangement.SpaceBetween,
            Arrangement.spacedBy(Measures.apart),
        ) {
            Row(horizontalArrangement = Arrangement.spacedBy(Measures.apart)) {
                frame.back?.let { ThumbLine(it, send) }
                beside()
            }
            Row(horizontalArrangement = Arrangement.spacedBy(Measures.apart)) {
                frame.redo?.let { ThumbLine(it, send) }
                frame.undo?.let { ThumbLine(it, send) }
            }
        }
    }
}

/** A small act in that row. */
@Composable
internal fun ThumbLine(action: Action, send: (Event) -> Unit) {
    // Where type is large a sign says it, and the voice its words.
    if (largeType() && action.sign != Sign.NONE) return SignButton(action, send)
    Box(Modifier.touch(action, LocalTone.current.ink, send), contentAlignment = Alignment.Center) {
        Readable {
            Row(Modifier.padding(horizontal = 10.dp), Arrangement.spacedBy(8.dp), Alignment.CenterVertically) {
                if (action.sign != Sign.LATER) SignPicture(action.sign, size = 22.dp)
                Column(Modifier.weight(1f, fill = false)) {
                    Words(action.label, LocalLettering.current.label)
                    Words(action.detail, LocalLettering.current.tick, soft = true)
                }
                if (action.sign == Sign.LATER) SignPicture(action.sign, size = 22.dp)
            }
        }
    }
}
