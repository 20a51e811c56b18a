package jackwork.check;

import jackwork.geometry.Point;
import jackwork.geometry.Pose;
import jackwork.motion.rest.StrokeResult;
import jackwork.parts.Body;
import java.util.ArrayList;
import java.util.List;

/** Where bodies stand at every sample of the run, pressed and let back, from the position drawn. */
final class RunPoses {

    private final List<double[]> poses = new ArrayList<>();
    private final List<Double> strokes = new ArrayList<>();
    private final Subject subject;

    RunPoses(Subject subject) {
        this.subject = subject;
        StrokeResult run = subject.stroke();
        for (double[][] way : List.of(run.pose(), run.returnPose())) {
            for (int i = 0; i < way.length; i++) {
                if (way[i] != null && way[i].length > 0 && !Double.isNaN(way[i][0])) {
                    poses.add(way[i]);
                    strokes.add(run.stroke()[i]);
                }
            }
        }
    }

    int count() {
        return poses.size();
    }

    double stroke(int sample) {
        return strokes.get(sample);
    }

    /** How far a body has turned, rad. */
    double angle(int sample, int body) {
        if (body == subject.assembly().coinWorks().bucket()) {
            // No lever moves it, the coin does: it is shown from rest to its stop.
            double share = count() < 2 ? 0 : (double) sample / (count() - 1);
            return subject.assembly().coinWorks().angle(share);
        }
        return body == 0 ? 0 : poses.get(sample)[3 * moving(body) + 2];
    }

    /** Where a point of a body has gone, mm. */
    Point at(int sample, int body, Point drawn) {
        return pose(sample, body).apply(drawn);
    }

    Pose pose(int sample, int body) {
        if (body == 0) {
            return Pose.REST;
        }
        double angle = angle(sample, body);
        if (body == subject.assembly().coinWorks().bucket()) {
            return Pose.about(subject.assembly().coinWorks().pivot(), angle);
        }
        double[] pose = poses.get(sample);
        int moving = moving(body);
        Point turned = subject.assembly().body(body).centre().turned(angle);
        return new Pose(pose[3 * moving] - turned.x(), pose[3 * moving + 1] - turned.y(), angle);
    }

    private int moving(int body) {
        Body one = subject.assembly().body(body);
        return subject.mechanism().bodyNumber(one.name());
    }
}
