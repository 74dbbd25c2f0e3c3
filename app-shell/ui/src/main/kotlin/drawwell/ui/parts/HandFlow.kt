package drawwell.ui.parts

import androidx.compose.foundation.layout.Arrangement
import androidx.compose.foundation.layout.FlowRow
import androidx.compose.runtime.Composable
import androidx.compose.runtime.CompositionLocalProvider
import androidx.compose.ui.Modifier
import androidx.compose.ui.platform.LocalLayoutDirection
import drawwell.ui.look.Measures

/** As a row for the thumb, but what has no room in it goes on below. */
@Composable
internal fun HandFlow(modifier: Modifier = Modifier, content: @Composable () -> Unit) {
    CompositionLocalProvider(LocalLayoutDirection provides handDirection()) {
        FlowRow(
            modifier,
            horizontalArrangement = Arrangement.spacedBy(Measures.apart),
            verticalArrangement = Arrangement.spacedBy(Measures.apart),
        ) { content() }
    }
}
